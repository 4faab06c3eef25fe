// The fields of everything that is packed, each list once: the build writes a value field by field, and the reader
// reads it back in the same order. A field that is not listed, or listed twice, does not compile.

use calc::models::bark::BarkRange;
use calc::models::cautions::{Caution, When};
use calc::models::condition::MethodRule;
use calc::models::condition::{RowCondition, Sizes};
use calc::models::effort::MethodMinutes;
use calc::models::grown::ClimateRegion;
use calc::models::habitat::{CavityUser, SnagGuide};
use calc::models::height_hazard::{HazardRow, Measure, Trees};
use calc::models::outlook::{OutlookClass, OutlookOverride, OutlookRow, Share, SizeClass};
use calc::models::trigger::Trigger;
use calc::reference::{NameByPlace, Reference};
use calc::terms::cite::{Cite, Grade};
use calc::terms::method::{Cell, Level, Method};
use calc::terms::place::HeightBand;
use calc::terms::regional::{Authority, OtherTree, Regional};
use calc::terms::species::{
    AskedFor, BarkRatio, Confidence, DeathRow, Durability, Form, Group, HeightRow, LookAlike,
    NativeRange, Species, SproutRow, SproutVigor, Suitability, Trait, TrialTold, WoodClass,
};
use calc::terms::tree::Setting;
use calc::timing::closed_months::{Restriction, Scope, Topic};
use calc::timing::disease::{DiseaseRegion, DiseaseStatus};

use crate::list_tables::{AssumedNumber, CellWord, Column, HeaderWord, ListTables, WordKind};

packed! {
    Reference {
        sources, sources_by_id, species, method_rules, cautions, outlook, outlook_species, cavity_users, snag_guides, method_minutes,
        restrictions, disease_regions, names_by_place, regions, bark_ranges, height_hazard, constants, data_version, regional,
    }
    Species {
        scientific, name, names, code, unknown, group, basal, suckering, suitability, response, bark, heights,
        small, heights_borrowed, crowns, mature_height_ft, urban_height_ft, wood, budbreak_sum, budbreak, sprouting, durability,
        native, look_alikes, deaths, trials_told, asked_for, traits, ring_minimum_mm, cautions,
    }
    AskedFor { rank, codes }
    BarkRatio { coefficient, confidence, cite }
    HeightRow { form, b, out, peak, region, cite }
    SproutRow { variant, at }
    LookAlike { name, scientific, mark, native }
    DeathRow { n, dbh, ring, season, after, dead, source }
    MethodRule { id, condition, sizes, cells, cites }
    Sizes { group, at_base, from, to, or_stems }
    TrialTold { text, source }
    ClimateRegion { code, south, band }
    BarkRange { confidence, north_america, low, high, cites }
    HazardRow { measure, trees, setting, band, values, cites }
    Cell { at_most, by_professional, holds }
    MethodMinutes { method, group, dbh_in, minutes, of, cite }
    Caution { id, trigger, subject, sentence, who, methods, not_in, when, cites }
    OutlookRow { class, size, seasons, second_ring, anchors, own, cites }
    OutlookOverride { scientific, size, season, share, n, note, cites }
    Share { low, likely, high }
    CavityUser { name, regions, min_dbh_in, min_height_ft, note, cite }
    SnagGuide { guidance, per_acre, regions, note, because }
    Restriction { jurisdiction, codes, topic, scope, from_md, to_md, force, cite }
    DiseaseRegion { code, topic, status, authority, months, cite }
    NameByPlace { name, codes, scientific }
    Regional { sources, sources_by_id, authorities, others }
    Authority { caution, country, who, law, cite }
    OtherTree {
        names, scientific, native, never_offer, group, no_trial, sprouts, make_sure, traits, cautions, mind, as_species,
    }
    NativeRange { codes, not_in, doubtful }
    ListTables { headers, words, symbols, assumed }
    AssumedNumber { name, value, unit }
    HeaderWord { key, column, unit, language }
    CellWord { kind, word, means }
    Cite { source, place, grade }
}

tagged! {
    RowCondition, Confidence, DiseaseStatus, Durability, Form, Grade, Group, HeightBand, Level, Measure, Method, OutlookClass, Scope, Setting, SizeClass, Suitability,
    Topic, Trait, Trees, Trigger, SproutVigor, When, WoodClass, Column, WordKind,
}
