//! A form that does not stand in the page yet is drawn twice, the first time for nobody to see and in two steps. Most of a
//! first drawing is the browser's, which compiles each piece of the module where it first runs; between the steps the page
//! can be drawn and used.

use crate::device::today;
use crate::host::attributes::country;
use calc_view::form::{FormOptions, Sheet, View};
use calc_view::out::Html;

/// What a form follows from is worked out; and with `drawn` the form is drawn.
pub(crate) fn rehearse(drawn: bool) {
    let country = country();
    let options = FormOptions {
        country: &country,
        ..FormOptions::alone(today())
    };
    let sheet = Sheet::default();
    let view = View::new(calc_data::reference(), &sheet, &options);
    if drawn {
        view.form(&mut Html::default());
    }
}
