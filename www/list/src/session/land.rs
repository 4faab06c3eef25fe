//! Land of parts, as it is typed under a plan.

use super::{Session, Work};
use calc_view::plan::screen::land::{self, LandForm, LandShown};

impl Session {
    /// Takes what was typed of land, and plans with it; what is wrong is told beside its field.
    pub(super) fn take_land(&mut self, entries: &[(String, String)]) {
        let Some(list) = &self.list else { return };
        let typed = LandForm::of(list, entries);
        let wrong = typed.wrong(list, self.options.units);
        if let Some((_, said)) = wrong.first() {
            self.told.said.clone_from(said);
            self.told.to = land::FIRST_WRONG;
            self.land_wrong = Some((typed, wrong));
            self.draw();
            return;
        }
        (self.land, self.land_wrong) = (typed, None);
        self.judge_for(Work::Judging);
        self.told.to = "l-sentence";
    }

    pub(super) fn land_shown(&self) -> LandShown<'_> {
        match &self.land_wrong {
            Some((form, wrong)) => LandShown { form, wrong },
            None => LandShown {
                form: &self.land,
                wrong: &[],
            },
        }
    }
}
