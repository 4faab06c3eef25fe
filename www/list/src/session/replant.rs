//! Replanting: the distance that is typed, and the file of natives, which the page fetches when its fold is opened.

use super::Session;
use calc_view::plan::replant::{Natives, spacing_m};
use calc_view::plan::screen::FIELD_WRONG;
use calc_view::plan::screen::replant::{PlantingShown, REPLANT};

/// What is known of replanting beside the plan.
#[derive(Default)]
pub(super) struct Planting {
    /// The distance between two trees, as typed.
    pub(super) typed: String,
    /// Natives, once their file is here.
    pub(super) natives: Option<Natives>,
}

impl Session {
    /// Takes the file of natives. False where the bytes are none.
    pub(crate) fn take_natives(&mut self, bytes: Vec<u8>) -> bool {
        // It stays as long as the worker does.
        let text = String::from_utf8(bytes).ok();
        self.planting.natives = text.and_then(|text| Natives::of(text.leak()));
        self.planting.natives.is_some()
    }

    /// Takes the distance between two trees; the plan stays as it is.
    pub(super) fn take_spacing(&mut self, entries: &[(String, String)]) {
        let typed = entries.first().map_or("", |(_, typed)| typed.trim());
        typed.clone_into(&mut self.planting.typed);
        self.told.to = match spacing_m(typed, self.options.units) {
            Some(_) => "l-replant",
            None => FIELD_WRONG,
        };
        self.draw();
        if let Some(drawn) = self.rows(REPLANT, 0) {
            let name = ["t-", REPLANT].concat();
            self.told.areas.insert(name, drawn);
        }
    }

    pub(super) fn planting_shown(&self) -> PlantingShown<'_> {
        let season = self.season.as_ref();
        PlantingShown {
            typed: &self.planting.typed,
            units: self.options.units,
            land: season.map_or(&[], |season| &season.asked.season.land),
        }
    }
}
