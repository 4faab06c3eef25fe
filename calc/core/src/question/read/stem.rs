//! Stems: size, live share, bark.

use super::numbers::NumberOf;
use super::{Reader, entry, given};
use crate::question::fields::{LIVE_SHARE, MOST_STEMS};
use crate::question::{Code, StemTyped, Text};
use crate::terms::number::Unit;
use crate::terms::quantity::{BarkThickness, Dbh, Range};
use crate::terms::tree::Stem;

impl Reader {
    pub(super) fn stems(&mut self, typed: &[StemTyped]) -> Option<Vec<Stem>> {
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
            .map(|(at, stem)| self.stem(at, stem))
            .collect();
        stems.into_iter().collect()
    }

    pub(super) fn stem(&mut self, at: usize, typed: &StemTyped) -> Option<Stem> {
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

    pub(super) fn live_share(&mut self, field: &str, typed: &Option<Text>) -> Option<f64> {
        match given(typed) {
            None => Some(1.0),
            Some(text) => self
                .plain(field, text, Unit::Percent, "%", LIVE_SHARE)
                .map(|share| share / 100.0),
        }
    }
}
