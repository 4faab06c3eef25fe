//! A form that does not stand in the page yet is drawn twice, the first time for nobody to see and in two steps. Most of a
//! first drawing is the browser's, which compiles each piece of the module where it first runs; between the steps the page
//! can be drawn and used.

use crate::device::today;
use crate::host::attributes::country;
use calc_view::form::{FormOptions, Sheet, View, no_table};
use calc_view::kind::Kind;
use calc_view::out::Html;

/// What a form follows from is worked out; and with `drawn` the form is drawn.
pub(crate) fn rehearse(drawn: bool) {
    let options = FormOptions {
        group: None,
        lang: "",
        kind: Kind::TreePlan,
        heading_level: 2,
        today: today(),
        local: no_table,
        answered: false,
        country: &country(),
        towns: None,
        position: false,
        near: |_, _, _| Vec::new(),
        keeps: false,
        listed: false,
        built: false,
    };
    let sheet = Sheet::default();
    let view = View::new(calc_data::reference(), &sheet, &options);
    if drawn {
        view.form(&mut Html::default());
    }
}
