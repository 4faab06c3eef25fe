//! Sizes of stem as the table of methods writes them: `> 6`, `>= 1 <= 2.5`, `base > 2.5; shrub: base > 4`,
//! `shrub: base < 3 or 4 stems`. Inches at breast height, or at the base.

use crate::table::{At, Defect};
use calc::models::condition::Sizes;
use calc::terms::species::Group;

/// Reads a cell; an empty one is every size.
pub(crate) fn read(at: At, text: &str) -> Result<&'static [Sizes], Defect> {
    let mut all: Vec<Sizes> = Vec::new();
    for part in text
        .split(';')
        .map(str::trim)
        .filter(|part| !part.is_empty())
    {
        let sizes = one(part).ok_or_else(|| {
            let like = "> 6; >= 1 <= 2.5; shrub: base < 3 or 4 stems";
            at.problem(format!("size_in: \"{part}\" is no size such as {like}"))
        })?;
        if all.iter().any(|known| known.group == sizes.group) {
            return Err(at.problem(format!("size_in: \"{part}\" is a second size of one group")));
        }
        all.push(sizes);
    }
    Ok(all.leak())
}

fn one(part: &str) -> Option<Sizes> {
    let (group, rest) = match part.split_once(':') {
        Some((group, rest)) => (Some(Group::parse(group.trim())?), rest.trim()),
        None => (None, part),
    };
    let (rest, or_stems) = match rest.split_once(" or ") {
        Some((rest, count)) => (rest, Some(count.strip_suffix(" stems")?.parse().ok()?)),
        None => (rest, None),
    };
    let (rest, at_base) = match rest.strip_prefix("base ") {
        Some(rest) => (rest, true),
        None => (rest, false),
    };
    let mut sizes = Sizes {
        group,
        at_base,
        from: None,
        to: None,
        or_stems,
    };
    let words: Vec<&str> = rest.split_whitespace().collect();
    for pair in words.chunks(2) {
        let [sign, limit] = pair else { return None };
        let limit: f64 = limit.parse().ok().filter(|limit| *limit > 0.0)?;
        let (end, with) = match *sign {
            ">" => (&mut sizes.from, false),
            ">=" => (&mut sizes.from, true),
            "<" => (&mut sizes.to, false),
            "<=" => (&mut sizes.to, true),
            _ => return None,
        };
        if end.replace((limit, with)).is_some() {
            return None;
        }
    }
    let ends = sizes.from.is_some() || sizes.to.is_some();
    let in_order = sizes
        .from
        .zip(sizes.to)
        .is_none_or(|(from, to)| from.0 < to.0);
    (ends && in_order).then_some(sizes)
}
