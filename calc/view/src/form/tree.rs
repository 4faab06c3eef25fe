//! The first group: which tree, how thick.

use super::field::{TextField, button, open_group, open_shown};
use super::sheet::path;
use super::{Field, Part, View, species, words as w};
use crate::out::{Out, OutExt};

/// The group.
pub(super) fn group(view: &View<'_>, out: &mut dyn Out) {
    open_group(out, w::TREE);
    species::field(view, out);
    view.whole_part(out, Part::Stems);
    view.whole_part(out, Part::SizeTape);
    button(out, "add-stem", None, w::ADD_STEM, false);
    out.close();
}

/// Across or around: neither is picked for the asker, for a girth read as a diameter is three times too much.
fn how(view: &View<'_>, out: &mut dyn Out, at: usize) {
    out.open_class("fieldset", "field");
    out.open_class("legend", "vh");
    out.text(w::HOW);
    if at > 0 {
        out.text(w::OF_STEM);
        out.text(&crate::measure::number(at as u32 + 1));
    }
    out.close();
    out.open_class("div", "row2");
    view.radios(
        out,
        &super::sheet::how(at),
        &[("across", w::ACROSS), ("around", w::AROUND)],
    );
    out.close();
    if at == 0 {
        view.live_line(out, "p", "asm", "stems-how-a");
    }
    out.close();
}

/// The size of each stem; the first carries the unit for all.
pub(super) fn stems(view: &View<'_>, out: &mut dyn Out) {
    for at in 0..view.sheet.count("stems") {
        let name = path("stems", at, "diameter");
        let number = crate::measure::number(at as u32 + 1);
        let remove = [w::REMOVE_STEM, &number].concat();
        let label = [w::STEM, &number].concat();
        let first = at == 0;
        view.text_field(
            out,
            &TextField {
                label: if first { w::SIZE } else { &label },
                hint: if first { size_hint(view.sheet) } else { "" },
                unit_here: first,
                button: (!first).then_some(("remove-stem", at, &*remove)),
                ..TextField::number(&name, w::SIZE)
            },
        );
        how(view, out, at);
    }
}

/// Where the size is taken: breast height is 4.5 ft in the United States and 1.3 m elsewhere.
pub(super) fn size_hint(sheet: &super::Sheet) -> &'static str {
    if sheet.metric() {
        w::SIZE_METRIC
    } else {
        w::SIZE_US
    }
}

/// Live share of each stem, and bark of those behind the first.
pub(super) fn stems_more(view: &View<'_>, out: &mut dyn Out) {
    let count = view.sheet.count("stems");
    for at in 0..count {
        let of_stem = if count > 1 {
            [w::OF_STEM, &crate::measure::number(at as u32 + 1)].concat()
        } else {
            String::new()
        };
        if at > 0 {
            let name = path("stems", at, "bark");
            let tail = [w::IF_MEASURED, &of_stem].concat();
            open_shown(out, &stem_id(Field::Bark, at), view.shows(Field::Bark));
            view.text_field(
                out,
                &TextField {
                    tail: &tail,
                    ..TextField::number(&name, w::BARK)
                },
            );
            out.close();
        }
        let name = path("stems", at, "live_share");
        open_shown(
            out,
            &stem_id(Field::LiveShare, at),
            view.shows(Field::LiveShare),
        );
        out.open_class("div", "field");
        view.bare_field(
            out,
            &TextField {
                tail: &of_stem,
                hint: w::LIVE_HINT,
                ..TextField::number(&name, w::LIVE_SHARE)
            },
        );
        out.leaf_class("p", "asm", w::LIVE_EMPTY);
        out.close();
        out.close();
    }
}

/// The element of a stem's field.
pub(super) fn stem_id(field: Field, at: usize) -> String {
    [field.id(), "-", &crate::measure::number(at as u32)].concat()
}
