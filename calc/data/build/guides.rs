//! Small tables of what others ask for or timed, and the sources that a cell of the outlook names.

use crate::pack::Pack;
use crate::rules::{Sources, grade, shown};
use crate::table::{Problem, Row, Table};
use crate::tags;
use calc::terms::cite::Grade;
use calc::terms::method::Method;
use calc::terms::species::Group;
use std::path::Path;

/// Snags an acre by guideline; what is only remembered stays out.
pub fn snags(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let table = Table::read(content, "evidence", "snag_guides")?;
    let rows = shown(&table)?;
    pack.len(rows.len());
    for (row, grade) in rows {
        pack.text(row.text("guidance")?);
        pack.text(row.text("per_acre")?);
        pack.texts(row.text("codes")?.split(' '));
        pack.text(
            &row.text("note")?
                .replace("conversion DERIVED", "the conversion is ours"),
        );
        sources.cite(pack, &row, row.text("source_id")?, "per_acre", grade)?;
    }
    Ok(())
}

/// Minutes of other methods, as printed.
pub fn method_minutes(content: &Path, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let table = Table::read(content, "rules", "method_minutes")?;
    pack.len(table.rows().count());
    for row in table.rows() {
        let method = match row.text("method")? {
            "fell" => Method::Fell,
            other => return Err(row.problem(format!("method: \"{other}\" is not known"))),
        };
        pack.one_of(&Method::ALL, &method);
        match row.text("group")? {
            "" => pack.tag(tags::GROUPS.len()),
            "conifer" => pack.one_of(tags::GROUPS, &Group::Conifer),
            other => return Err(row.problem(format!("group: \"{other}\" is not known"))),
        }
        let low = row.within("dbh_low_in", 0.0, 200.0)?;
        pack.number(low);
        pack.number(row.within("dbh_high_in", low, 200.0)?);
        let low = row.within("low_min", 0.0, 1000.0)?;
        pack.number(low);
        pack.number(row.within("high_min", low, 1000.0)?);
        pack.text(row.text("of_what")?);
        let grade = grade(&row, "grade")?;
        sources.cite(
            pack,
            &row,
            row.text("source_id")?,
            row.text("place")?,
            grade,
        )?;
    }
    Ok(())
}

/// A note on a cell as a reader gets it: `M01` and `S02` by the label of their source, S1 to S4 as seasons.
pub fn told(note: &str, sources: &Sources) -> String {
    let mut told = String::new();
    for piece in note.split_inclusive(|c: char| !c.is_ascii_alphanumeric()) {
        let word = piece.trim_end_matches(|c: char| !c.is_ascii_alphanumeric());
        let after = &piece[word.len()..];
        match (word.strip_prefix('S'), sources.label(word)) {
            (Some(season @ ("1" | "2" | "3" | "4")), _) => {
                told.push_str("season ");
                told.push_str(season);
            }
            (_, Some(label)) if is_id(word) => {
                told.push_str(label);
                told.push_str(if after == " " { ":" } else { "" });
            }
            _ => told.push_str(word),
        }
        told.push_str(after);
    }
    told
}

/// True of a letter and two digits.
fn is_id(word: &str) -> bool {
    word.len() == 3
        && word.starts_with(|c: char| c.is_ascii_uppercase())
        && word.bytes().skip(1).all(|c| c.is_ascii_digit())
}

/// The sources that the anchors of a cell name (`M01`, `S02`; S1 to S4 are seasons there), and our own assumption
/// where the cell says what of it is ours.
pub fn anchors(row: &Row<'_>, sources: &Sources, pack: &mut Pack) -> Result<(), Problem> {
    let mut ids: Vec<&str> = Vec::new();
    for word in row
        .text("anchors")?
        .split(|c: char| !c.is_ascii_alphanumeric())
    {
        if is_id(word) && !ids.contains(&word) {
            ids.push(word);
        }
    }
    let own = row.text("our_own_assumption")?;
    if ids.is_empty() && own.is_empty() {
        return Err(
            row.problem("neither anchors nor our_own_assumption says what the cell rests on")
        );
    }
    pack.len(ids.len() + usize::from(!own.is_empty()));
    for id in ids {
        sources.cite(
            pack,
            row,
            id,
            "counts that bound the cell",
            Grade::Published,
        )?;
    }
    if !own.is_empty() {
        sources.cite(pack, row, "own", own, Grade::Assumption)?;
    }
    Ok(())
}
