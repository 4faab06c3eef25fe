//! What a group asks for beyond the table: one more lowering each, with a reason of its own.

use super::Case;
use crate::terms::cite::Cite;
use crate::terms::method::{Cell, Level, Method};

/// What both rest on.
pub(super) const BECAUSE: &[Cite] = &[Cite::group("this group's own rule")];

/// Reason: no ring in these months.
pub const GROUP_MONTHS: &str = "group_months";
/// Reason: over the group's size for volunteers.
pub const GROUP_SIZE: &str = "group_size";

type Own = (&'static str, Cell, fn(Method) -> bool);

/// The rules of the group that hold for a case.
pub(super) fn rules(case: &Case<'_>) -> impl Iterator<Item = Own> {
    let tighten = case.question.tighten();
    let months: Own = (
        GROUP_MONTHS,
        Cell {
            at_most: Level::RuledOut,
            ..Cell::NOTHING
        },
        |method| matches!(method, Method::BarkRing | Method::SawRing),
    );
    let size: Own = (
        GROUP_SIZE,
        Cell {
            by_professional: true,
            ..Cell::NOTHING
        },
        |method| method != Method::LeaveIt,
    );
    let blocked = tighten.blocks(case.month) && !case.ignore_months;
    let large = tighten.too_large(case.dbh_mm);
    [(blocked, months), (large, size)]
        .into_iter()
        .filter_map(|(holds, rule)| holds.then_some(rule))
}
