//! Reads the packed tables back, once, in the order in which the build wrote them.

use crate::reader::Reader;
use crate::tags;
use calc::models::cautions::Caution;
use calc::models::condition::Condition;
use calc::models::effort::MethodMinutes;
use calc::models::effort::{EffortConstants, Three};
use calc::models::habitat::{CavityUser, SnagGuide};
use calc::models::height::HeightConstants;
use calc::models::method::MethodRule;
use calc::models::outlook::{OutlookOverride, OutlookRow, Share};
use calc::models::reach::ReachConstants;
use calc::models::ring::RingConstants;
use calc::reference::{Constants, Reference, Source};
use calc::terms::cite::Cite;
use calc::terms::method::Method;
use calc::terms::species::{Bark, DeathRow, HeightRow, LookAlike, Species, SproutRow};
use calc::timing::closed_months::{DiseaseRegion, Restriction};

impl Reader {
    /// All tables.
    #[inline(never)]
    pub fn reference(&mut self, data_version: &'static str) -> Reference {
        self.states = self.strings();
        Reference {
            species: self.list(Self::species),
            method_rules: self.list(Self::method_rule),
            constants: Box::leak(Box::new(self.constants())),
            cautions: self.list(|r| Caution {
                id: r.text(),
                text: r.sentence(),
                defers_to: r.sentence(),
                when: r.one_of(tags::WHENS),
                decided: r.flag(),
                cites: r.cites(),
            }),
            outlook: self.list(|r| OutlookRow {
                class: r.one_of(tags::CLASSES),
                size: r.one_of(tags::SIZES),
                seasons: [r.share(), r.share(), r.share()],
                second_ring: (r.number(), r.number()),
                anchors: r.sentence(),
                own: r.sentence(),
                cites: r.cites(),
            }),
            outlook_species: self.list(|r| OutlookOverride {
                scientific: r.text(),
                size: r.one_of(tags::SIZES),
                season: r.text(),
                share: r.share(),
                n: r.text(),
                note: r.sentence(),
                cites: r.cites(),
            }),
            cavity_users: self.list(|r| CavityUser {
                name: r.text(),
                regions: r.strings(),
                min_dbh_in: r.maybe(),
                min_height_ft: r.maybe(),
                note: r.sentence(),
                cite: r.cite(),
            }),
            snag_guides: self.list(|r| SnagGuide {
                guidance: r.text(),
                per_acre: r.text(),
                regions: r.strings(),
                note: r.text(),
                because: r.cite(),
            }),
            method_minutes: self.list(|r| MethodMinutes {
                method: r.one_of(&Method::ALL),
                group: tags::GROUPS.get(r.tag()).copied(),
                dbh_in: (r.number(), r.number()),
                minutes: (r.number(), r.number()),
                of: r.text(),
                cite: r.cite(),
            }),
            restrictions: self.list(Self::restriction),
            disease_regions: self.list(|r| DiseaseRegion {
                topic: r.one_of(tags::TOPICS),
                known_only_in: r.strings(),
                not_known_in: r.strings(),
            }),
            sources: self.list(|r| Source {
                id: r.text(),
                label: r.text(),
            }),
            data_version,
        }
    }

    fn share(&mut self) -> Share {
        Share {
            low: self.number(),
            likely: self.maybe(),
            high: self.number(),
        }
    }

    fn restriction(&mut self) -> Restriction {
        let mut day = || (self.tag() as u8, self.tag() as u8);
        let (from_md, to_md) = (day(), day());
        Restriction {
            jurisdiction: self.text(),
            codes: self.strings(),
            topic: self.one_of(tags::TOPICS),
            scope: self.one_of(tags::SCOPES),
            from_md,
            to_md,
            force: self.sentence(),
            cite: self.cite(),
        }
    }

    fn method_rule(&mut self) -> MethodRule {
        let condition = self.one_of(Condition::ALL);
        MethodRule {
            id: condition.id(),
            condition,
            cells: core::array::from_fn(|_| tags::cell(self.tag())),
            cites: self.cites(),
        }
    }

    #[inline(never)]
    fn curve(&mut self) -> HeightRow {
        let (name, form, coefficients) = self.one_of(tags::FORMS);
        let mut b = [0.0; 5];
        for b in b.iter_mut().take(coefficients) {
            *b = self.number();
        }
        let (low, high, peak) = (self.maybe(), self.maybe(), self.maybe());
        let region = self.text();
        HeightRow {
            form,
            b,
            out: low.zip(high),
            peak,
            region,
            cite: Cite {
                source: self.text(),
                place: [name, " ", region].concat().leak(),
                grade: self.one_of(tags::GRADES),
            },
        }
    }

    #[inline(never)]
    fn species(&mut self) -> Species {
        let names = self.strings();
        Species {
            scientific: self.text(),
            name: names[0],
            names,
            code: self.text(),
            unknown: self.flag(),
            group: self.one_of(tags::GROUPS),
            basal: self.one_of(tags::VIGORS),
            suckering: self.one_of(tags::VIGORS),
            suitability: self.one_of(tags::SUITABILITIES),
            response: self.one_of(tags::GRADES),
            bark: self.flag().then(|| Bark {
                coefficient: self.number(),
                confidence: self.one_of(tags::CONFIDENCES),
                cite: self.cite(),
            }),
            heights: self.list(Self::curve),
            heights_borrowed: self.flag(),
            crowns: self.list(Self::curve),
            mature_height_ft: self.maybe(),
            urban_height_ft: self.maybe(),
            wood: self.one_of(tags::WOODS),
            budbreak_sum: self.maybe(),
            budbreak: self.cite(),
            sprouting: self.list(|r| SproutRow {
                variant: r.text(),
                p: core::array::from_fn(|_| r.number()),
            }),
            durability: self.one_of(tags::DURABILITIES),
            warn_states: self.some_states(),
            look_alikes: self.list(|r| LookAlike {
                name: r.text(),
                scientific: r.text(),
                mark: r.sentence(),
                native: r.flag(),
            }),
            deaths: self.list(|r| DeathRow {
                n: r.text(),
                dbh: r.text(),
                ring: r.text(),
                season: r.text(),
                after: r.text(),
                dead: r.text(),
                source: r.text(),
            }),
            traits: self.list(|r| r.one_of(tags::TRAITS)),
            ring_minimum_mm: self.maybe(),
            cautions: self.strings(),
        }
    }

    fn three(&mut self) -> Three {
        Three {
            low: self.number(),
            likely: self.number(),
            high: self.number(),
        }
    }

    /// In the order of the fields as the build lists them.
    #[inline(never)]
    fn constants(&mut self) -> Constants {
        Constants {
            ring: RingConstants {
                least_mm: self.number(),
                most_mm: self.number(),
                closure_mm: core::array::from_fn(|_| self.number()),
                closure_factor: self.number(),
                seasons_short: self.number(),
                seasons_long: self.number(),
                seasons_large: self.number(),
                large_mm: self.number(),
                seasons_spared: self.number(),
                least_share: self.number(),
            },
            height: HeightConstants {
                hazard: self.number(),
                tall: self.number(),
                shrub: self.number(),
                shrub_default_ft: self.number(),
                ask_below: self.number(),
                ask_above: self.number(),
            },
            reach: ReachConstants {
                can_land: self.number(),
                zone: self.number(),
                zone_downhill: self.number(),
                steep: self.number(),
                too_steep: self.number(),
                too_steep_heights: self.number(),
                people_out: self.number(),
                line_ft: self.number(),
                line_step_in: self.number(),
                line_step_kv: self.number(),
                line_base_kv: self.number(),
                small_mm: self.number(),
                small_m: self.number(),
            },
            effort: EffortConstants {
                fixed: self.three(),
                score: [self.three(), self.three(), self.three()],
                score_mm: core::array::from_fn(|_| self.number()),
                peel: self.three(),
                scrape: self.three(),
                tight: self.three(),
                delays: self.three(),
                limbs: self.three(),
                limby_ft: core::array::from_fn(|_| self.number()),
                walk_min: self.number(),
                walk_m_per_min: self.number(),
                practised: self.number(),
                visit: self.three(),
                sticking: (self.number(), self.number()),
            },
            base_over_dbh: self.number(),
            timing: calc::timing::Constants::from_values(|| self.number()),
        }
    }
}
