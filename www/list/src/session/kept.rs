//! What is kept of an open list, how it comes back, and the plan before.

use super::Session;
use super::found::FoundTable;
use crate::draft::{Draft, KeptFound};
use calc_view::plan::earlier;
use calc_view::plan::screen::hit::Replied;
use calc_view::plan::screen::land::LandForm;
use calc_view::plan::screen::season::PlanBefore;

impl Session {
    /// Opens a list as it was left.
    pub(crate) fn restore(&mut self, name: &str, bytes: Vec<u8>, draft: &str) {
        let Ok(draft) = serde_json::from_str::<Draft>(draft) else {
            self.open(name, bytes);
            return;
        };
        name.clone_into(&mut self.name);
        self.bytes = bytes;
        (self.list, self.season, self.made, self.look) = (None, None, None, None);
        self.offered.clear();
        self.wrong = None;
        self.before = None;
        self.edits = draft.edits();
        self.filled = draft.crew;
        self.last_row = draft.last_row;
        self.kept = draft
            .days
            .as_ref()
            .and_then(earlier::kept_in)
            .unwrap_or_default();
        self.replied = Replied::of_kept(calc_data::reference(), draft.replied);
        self.found = draft.found.into_iter().next().map(FoundTable::from);
        (self.found_told, self.no_found, self.land_wrong) = (None, None, None);
        self.land = LandForm::of_kept(draft.land);
        self.planting.typed = draft.spacing;
        self.decisions = draft.decisions;
        if draft.planned {
            self.plan();
        }
        // What can't be planned as it was filled in is read all the same.
        if !draft.planned || self.wrong.is_some() {
            self.begin();
        }
    }

    /// The id of the bytes that are open; empty where none are.
    pub(crate) fn id(&self) -> String {
        match self.bytes.is_empty() {
            true => String::new(),
            false => calc_plan::fingerprint(&self.bytes),
        }
    }

    /// What brings the list back as it is, beside its bytes.
    pub(crate) fn draft(&self) -> String {
        let mut draft = Draft::of(
            &self.decisions,
            &self.edits,
            &self.filled,
            self.replied.kept(),
            self.last_row,
        );
        draft.found = self.found.iter().map(KeptFound::from).collect();
        draft.land = self.land.kept();
        draft.spacing.clone_from(&self.planting.typed);
        draft.planned = self.season.is_some();
        draft.days = self.made.as_ref().map(|made| earlier::days_of(&made.file));
        serde_json::to_string(&draft).unwrap_or_default()
    }

    /// A plan that does not hold any more: what it came to, and its days, are remembered.
    pub(super) fn forget_plan(&mut self) {
        if let Some(made) = self.made.take() {
            let before = PlanBefore::of(made, self.planned_as.clone(), &mut self.leftover);
            self.found_before = self.planned_with.take();
            self.kept = earlier::kept_of(&before.file);
            self.before = Some(before);
        }
    }
}
