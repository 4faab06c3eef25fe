//! What differs by country and would weigh too much in the module: who decides and what the law says about a caution,
//! and the names of trees that are not on the list. It is a file of its own; until it is here, answers say less, and
//! nothing that is wrong.

use super::cite::Cite;
use super::region::{country, lies_in_any};
use super::source::{SourceId, SourceLine};
use super::species::{NativeRange, Species, Trait};
use std::sync::OnceLock;

/// The file, unpacked.
#[derive(Debug)]
pub struct Regional {
    /// Who decides, by caution and country, sorted by the caution.
    pub authorities: &'static [Authority],
    /// Trees that are not on the list.
    pub others: &'static [OtherTree],
    /// Sources that only this file cites, by number: the first comes after the last of `Reference::sources`.
    pub sources: &'static [SourceLine],
    /// All sources, those of `Reference::sources` too, in the order of their ids.
    pub sources_by_id: &'static [SourceId],
}

/// Who decides about a caution in a country.
#[derive(Debug)]
pub struct Authority {
    /// Id of the caution.
    pub caution: &'static str,
    /// Code of the country; `*` for all.
    pub country: &'static str,
    /// Who decides there; empty where the country has nobody of its own for it.
    pub who: &'static str,
    /// What the law says there, in plain words; empty where nobody of us read it.
    pub law: &'static str,
    /// What it rests on.
    pub cite: Cite,
}

/// A tree that people name and that is not on the list.
#[derive(Debug)]
pub struct OtherTree {
    /// Its names, the shown one first.
    pub names: &'static [&'static str],
    /// Scientific name.
    pub scientific: &'static str,
    /// Where it is native.
    pub native: NativeRange,
    /// Scientific names of the listed trees that it is mistaken for: they are never offered for it.
    pub never_offer: &'static [&'static str],
    /// The entry of the list that holds for it: `unknown broadleaf`, `unknown conifer`, `unknown shrub`.
    pub group: &'static str,
    /// It spreads or is often killed, but no trial of ringing it was read.
    pub no_trial: bool,
    /// It sprouts.
    pub sprouts: bool,
    /// It is mistaken for others: make sure what it is.
    pub make_sure: bool,
    /// Marks that hold for it although it is not on the list.
    pub traits: &'static [Trait],
    /// Ids of cautions that name it.
    pub cautions: &'static [&'static str],
    /// What to keep in mind, in words.
    pub mind: &'static str,
    /// The tree as the models take it, once it was asked for.
    pub as_species: OnceLock<Species>,
}

impl Regional {
    /// Who decides about a caution where a tree stands. None where the country has no row.
    #[must_use]
    pub fn authority(&self, caution: &str, region: &str) -> Option<&Authority> {
        let wanted = country(region);
        let first = self
            .authorities
            .partition_point(|row| row.caution < caution);
        self.authorities[first..]
            .iter()
            .take_while(|row| row.caution == caution)
            .find(|row| row.country == wanted || row.country == "*")
    }
}

impl OtherTree {
    /// Whether it is native where the asker's tree stands; none where no region was said.
    #[must_use]
    pub fn native_in(&self, region: Option<&str>) -> Option<bool> {
        region.map(|region| lies_in_any(region, self.native.codes))
    }

    /// The name by which it is asked for as one of the entries of the list: `unknown broadleaf (white ash)`.
    #[must_use]
    pub fn asked_as(&self) -> String {
        [self.group, " (", self.names[0], ")"].concat()
    }

    /// The tree as the models take it: its group's entry, with the marks and the cautions that hold for it.
    pub fn species(&'static self, group: &Species) -> &'static Species {
        self.as_species.get_or_init(|| {
            let name: &'static str = self.asked_as().leak();
            Species {
                scientific: self.scientific,
                name,
                names: vec![name].leak(),
                traits: self.traits,
                cautions: self.cautions,
                native: self.native,
                ..*group
            }
        })
    }
}
