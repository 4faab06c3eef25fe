//! What was answered inside a card goes into the fields of the form, as if it had been typed there.

use super::{NOTHING, Sheet, path};

/// Controls of a card. Their names begin with `ask.`, so that none is taken for a field of the form.
pub const ASK_KIND: &str = "ask.kind";
/// How far that thing is.
pub const ASK_FAR: &str = "ask.far";
/// Whether a line is in reach.
pub const ASK_LINE: &str = "ask.line";
/// The height.
pub const ASK_HEIGHT: &str = "ask.height";
/// The state or country.
pub const ASK_REGION: &str = "ask.region";
/// Whether the whole clone can be ringed.
pub const ASK_CLONE: &str = "ask.clone";
/// The kind that says that nothing is in reach.
pub const ASK_NOTHING: &str = NOTHING;

/// What is left to do before the answers of a card can be taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unfinished {
    /// Nothing was answered.
    Nothing,
    /// A thing was picked and its distance is not typed.
    Far,
}

impl Sheet {
    /// Takes what a card's controls say.
    ///
    /// # Errors
    /// What is left to do; the sheet is as it was.
    pub fn take_asked(&mut self, asked: &Self) -> Result<(), Unfinished> {
        let kind = asked.get(ASK_KIND);
        if !kind.is_empty() && kind != ASK_NOTHING && asked.blank(ASK_FAR) {
            return Err(Unfinished::Far);
        }
        let mut any = false;
        if kind == ASK_NOTHING {
            self.set("targets[0].kind", NOTHING);
            any = true;
        } else if !kind.is_empty() {
            let at = self.open_target(kind);
            self.set(&path("targets", at, "kind"), kind);
            self.set(&path("targets", at, "distance"), asked.trimmed(ASK_FAR));
            any = true;
        }
        for (from, to) in [
            (ASK_LINE, "line_within_reach"),
            (ASK_HEIGHT, "height"),
            (ASK_REGION, "region"),
            (ASK_CLONE, "whole_clone"),
        ] {
            if !asked.blank(from) {
                self.set(to, asked.trimmed(from));
                any = true;
            }
        }
        if any {
            Ok(())
        } else {
            Err(Unfinished::Nothing)
        }
    }

    /// The entry that a thing of this kind goes to: one of its kind without a distance, else an empty one, else a new.
    fn open_target(&mut self, kind: &str) -> usize {
        let count = self.count("targets");
        let blank = |at: usize| self.blank(&path("targets", at, "distance"));
        let of_kind = |at: usize| self.is(&path("targets", at, "kind"), kind);
        let empty = |at: usize| self.blank(&path("targets", at, "kind"));
        let found = (0..count)
            .find(|at| blank(*at) && of_kind(*at))
            .or((0..count).find(|at| blank(*at) && empty(*at)));
        found.unwrap_or_else(|| {
            self.add("targets");
            count
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn asked(entries: &[(&str, &str)]) -> Sheet {
        let mut sheet = Sheet::default();
        for (name, text) in entries {
            sheet.push(*name, *text);
        }
        sheet
    }

    #[test]
    fn what_a_card_asked_goes_into_the_fields_of_the_form() {
        let mut form = Sheet::new();
        let found = form.take_asked(&asked(&[(ASK_KIND, "path"), (ASK_FAR, " 60 ")]));
        assert_eq!(found, Ok(()));
        assert!(form.is("targets[0].kind", "path") && form.is("targets[0].distance", "60"));
        // A second thing gets an entry of its own; the line and the rest have fields of theirs.
        let more = [(ASK_KIND, "road"), (ASK_FAR, "90 ft"), (ASK_LINE, "no")];
        assert_eq!(form.take_asked(&asked(&more)), Ok(()));
        assert!(form.is("targets[1].kind", "road") && form.is("line_within_reach", "no"));
        let nothing = [(ASK_KIND, ASK_NOTHING), (ASK_REGION, "US-WI")];
        assert_eq!(form.take_asked(&asked(&nothing)), Ok(()));
        assert!(form.is("targets[0].kind", NOTHING) && form.is("region", "US-WI"));
    }

    #[test]
    fn a_thing_without_a_distance_waits_for_it() {
        let mut form = Sheet::new();
        let before = form.clone();
        let half = asked(&[(ASK_KIND, "path"), (ASK_LINE, "no")]);
        assert_eq!(form.take_asked(&half), Err(Unfinished::Far));
        assert_eq!(form.take_asked(&asked(&[])), Err(Unfinished::Nothing));
        assert_eq!(form, before);
    }
}
