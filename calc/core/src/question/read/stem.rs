//! Stems: size, live share, bark.

use super::numbers::NumberOf;
use super::{Reader, entry, given};
use crate::question::fields::{LIVE_SHARE, MOST_STEMS};
use crate::question::{Code, SizeInDoubt, StemTyped, Text};
use crate::terms::number::{Unit, read_number};
use crate::terms::quantity::{BarkThickness, Dbh, Range};
use crate::terms::tree::Stem;

impl Reader {
    /// The stems. One over `ask_over_mm` is asked about again.
    pub(super) fn stems(&mut self, typed: &[StemTyped], ask_over_mm: f64) -> Option<Vec<Stem>> {
        if typed.is_empty() {
            self.problem("stems", Code::NoStem, "");
            return None;
        }
        if typed.len() > MOST_STEMS {
            self.problem("stems", Code::TooManyStems(MOST_STEMS), "");
            return None;
        }
        let stems: Vec<Option<Stem>> = typed
            .iter()
            .enumerate()
            .map(|(at, stem)| self.stem(at, stem, ask_over_mm))
            .collect();
        stems.into_iter().collect()
    }

    fn stem(&mut self, at: usize, typed: &StemTyped, ask_over_mm: f64) -> Option<Stem> {
        let field = |name: &str| entry("stems", at, name);
        let from_girth = given(&typed.girth).is_some();
        let dbh = match (given(&typed.diameter).is_some(), from_girth) {
            (true, true) => {
                let girth = typed.girth.as_ref().map_or("", |text| &text.0);
                self.problem(&field("girth"), Code::Both, girth);
                None
            }
            (false, false) => {
                self.problem(&field("diameter"), Code::Neither, "");
                None
            }
            (true, false) => self.size(&field("diameter"), &typed.diameter, 1.0),
            (false, true) => self.size(&field("girth"), &typed.girth, core::f64::consts::PI),
        };
        if let Some(dbh) = dbh.filter(|dbh| dbh.mm() > ask_over_mm) {
            let (name, text) = match from_girth {
                true => ("girth", &typed.girth),
                false => ("diameter", &typed.diameter),
            };
            self.doubt(&field(name), text, dbh);
        }
        let live_share = self.live_share(&field("live_share"), &typed.live_share);
        let bark = self.length(&field("bark"), &typed.bark, NumberOf::Bark);
        if let (Some(dbh), Some(bark)) = (dbh, bark)
            && bark * 2.0 >= dbh.mm()
        {
            let shown = self.shown(
                Range {
                    low: 0.0,
                    high: dbh.mm() / 2.0,
                },
                NumberOf::Bark,
            );
            let text = typed.bark.as_ref().map_or("", |text| &text.0);
            self.problem(&field("bark"), Code::BarkTooThick(shown), text);
        }
        Some(Stem {
            dbh: dbh?,
            from_girth,
            live_share: live_share?,
            bark: bark.and_then(BarkThickness::new),
        })
    }

    /// A diameter, or a girth where `round` is pi.
    pub(super) fn size(&mut self, field: &str, typed: &Option<Text>, round: f64) -> Option<Dbh> {
        let range = Range {
            low: Dbh::RANGE.low * round,
            high: Dbh::RANGE.high * round,
        };
        let mm = self.length_in(field, typed, NumberOf::Trunk, range)?;
        // Rounding at the very end of the range must not lose a girth that was taken.
        Dbh::new((mm / round).clamp(Dbh::RANGE.low, Dbh::RANGE.high))
    }

    /// Asks whether a trunk is as wide as it was read. The number and its unit are told as they were typed.
    fn doubt(&mut self, field: &str, typed: &Option<Text>, dbh: Dbh) {
        let Some((text, number)) =
            given(typed).and_then(|text| Some((text, read_number(text).ok()?)))
        else {
            return;
        };
        let doubt = SizeInDoubt {
            number: number.value,
            unit: number.unit.unwrap_or(self.bare(NumberOf::Trunk)).sign(),
            across_m: dbh.mm() / 1000.0,
        };
        self.problem(field, Code::SizeInDoubt(doubt), text);
    }

    pub(super) fn live_share(&mut self, field: &str, typed: &Option<Text>) -> Option<f64> {
        match given(typed) {
            None => Some(1.0),
            Some(text) => self
                .plain(field, text, Unit::Percent, "%", LIVE_SHARE)
                .map(|share| share / 100.0),
        }
    }
}
