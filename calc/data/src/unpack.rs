//! Reads the packed tables back, once, in the order in which the build wrote them.

use crate::tags;
use calc::evidence::Cite;
use calc::model::effort::{EffortConstants, Three};
use calc::model::height::HeightConstants;
use calc::model::method::{Cell, Condition, Method};
use calc::model::reach::ReachConstants;
use calc::model::ring::RingConstants;
use calc::reference::{
    Bark, Caution, CavityUser, Constants, DeathRow, Form, HeightRow, LookAlike, MethodMinutes,
    MethodRule, OutlookOverride, OutlookRow, Reference, Share, SnagGuide, Source, Species,
    SproutRow,
};
use calc::timing::restrictions::{DiseaseRegion, Restriction};

use core::str::Lines;

/// The streams, and how far each is read. The build wrote them, so nothing is missing.
pub struct Reader {
    ints: &'static [u8],
    tags: &'static [u8],
    texts: Lines<'static>,
    known: Vec<&'static str>,
}

impl Reader {
    pub fn new(ints: &'static [u8], tags: &'static [u8], texts: &'static str) -> Self {
        Self {
            ints,
            tags,
            texts: texts.lines(),
            known: Vec::new(),
        }
    }

    /// Whether everything was read.
    pub fn is_done(&self) -> bool {
        self.ints.is_empty() && self.tags.is_empty()
    }

    fn int(&mut self) -> usize {
        self.wide() as usize
    }

    fn wide(&mut self) -> u64 {
        let (mut value, mut shift) = (0_u64, 0);
        while let Some((byte, rest)) = self.ints.split_first() {
            self.ints = rest;
            value |= u64::from(byte & 0x7f) << shift;
            shift += 7;
            if *byte < 0x80 {
                break;
            }
        }
        value
    }

    #[inline(never)]
    fn tag(&mut self) -> usize {
        match self.tags.split_first() {
            Some((tag, rest)) => {
                self.tags = rest;
                usize::from(*tag)
            }
            None => 0,
        }
    }

    #[inline(never)]
    fn one_of<T: Copy>(&mut self, list: &[T]) -> T {
        list[self.tag()]
    }

    fn flag(&mut self) -> bool {
        self.tag() != 0
    }

    fn maybe(&mut self) -> Option<f64> {
        let tag = self.tag();
        if tag == 255 {
            return None;
        }
        let digits = self.wide() as f64;
        let mut scale = 1.0;
        for _ in 0..tag % 16 {
            scale *= 10.0;
        }
        let value = digits / scale;
        Some(if tag >= 16 { -value } else { value })
    }

    fn number(&mut self) -> f64 {
        self.maybe().unwrap_or(0.0)
    }

    fn text(&mut self) -> &'static str {
        match self.int() {
            0 => {
                let text = self.texts.next().unwrap_or("");
                self.known.push(text);
                text
            }
            before => self.known[before - 1],
        }
    }

    fn list<T>(&mut self, mut item: impl FnMut(&mut Self) -> T) -> &'static [T] {
        let len = self.int();
        let mut list = Vec::with_capacity(len);
        for _ in 0..len {
            list.push(item(self));
        }
        // The tables live as long as the program.
        list.leak()
    }

    fn strings(&mut self) -> &'static [&'static str] {
        self.list(Self::text)
    }

    fn cite(&mut self) -> Cite {
        Cite {
            source: self.text(),
            place: self.text(),
            grade: self.one_of(tags::GRADES),
        }
    }

    fn cites(&mut self) -> &'static [Cite] {
        self.list(Self::cite)
    }

    /// All tables.
    pub fn reference(&mut self, data_version: &'static str) -> Reference {
        Reference {
            species: self.list(Self::species),
            method_rules: self.list(Self::method_rule),
            constants: Box::leak(Box::new(self.constants())),
            cautions: self.list(|r| Caution {
                id: r.text(),
                text: r.text(),
                defers_to: r.text(),
                when: r.one_of(tags::WHENS),
                decided: r.flag(),
                cites: r.cites(),
            }),
            outlook: self.list(|r| OutlookRow {
                class: r.one_of(tags::CLASSES),
                size: r.one_of(tags::SIZES),
                seasons: [r.share(), r.share(), r.share()],
                second_ring: (r.number(), r.number()),
                anchors: r.text(),
                own: r.text(),
                cites: r.cites(),
            }),
            outlook_species: self.list(|r| OutlookOverride {
                scientific: r.text(),
                size: r.one_of(tags::SIZES),
                season: r.text(),
                share: r.share(),
                n: r.text(),
                note: r.text(),
                cites: r.cites(),
            }),
            cavity_users: self.list(|r| CavityUser {
                name: r.text(),
                regions: r.strings(),
                min_dbh_in: r.maybe(),
                min_height_ft: r.maybe(),
                note: r.text(),
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
            words: self.text(),
            scope: self.one_of(tags::SCOPES),
            from_md,
            to_md,
            force: self.text(),
            note: self.text(),
            cite: self.cite(),
        }
    }

    fn method_rule(&mut self) -> MethodRule {
        let condition = self.one_of(Condition::ALL);
        MethodRule {
            id: condition.id(),
            condition,
            cells: core::array::from_fn(|_| Cell {
                at_most: self.one_of(tags::LEVELS),
                by_professional: self.flag(),
                holds: self.flag(),
            }),
            cites: self.cites(),
        }
    }

    fn curve(&mut self) -> HeightRow {
        let form = match self.tag() {
            0 => Form::Wykoff,
            1 => Form::CurtisArney,
            2 => Form::Quad,
            3 => Form::Polynomial,
            tag if tag < 20 => Form::LogLog((tag - 10) as u8),
            tag => Form::Exp((tag - 20) as u8),
        };
        let b = core::array::from_fn(|_| self.number());
        let (low, high, peak) = (self.maybe(), self.maybe(), self.maybe());
        HeightRow {
            form,
            b,
            out: low.zip(high),
            peak,
            region: self.text(),
            cite: self.cite(),
        }
    }

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
            response: self.cite(),
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
            warn_states: self.strings(),
            look_alikes: self.list(|r| LookAlike {
                name: r.text(),
                scientific: r.text(),
                mark: r.text(),
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
            timing: calc::timing::Constants::from_values(&mut || self.number()),
        }
    }
}
