//! What comes after a species: what it does once it is cut, and the natives that may follow it.

use super::natives::{Native, Natives};
use super::species_pages::fold;
use calc::terms::quantity::{MM_PER_IN, Units};
use calc::terms::species::Species;
use calc_view::page::Page;
use calc_view::words::gap::other_tree;
use calc_view::words::prose::english;
use calc_view::words::{m, phrase};
use calc_view::{measure, words};

/// The sources of natives and caterpillars.
const SOURCES: [&str; 4] = ["NAT01", "NAT02", "NAT03", "NAT04"];

/// What it does after a cut: in words, and by size where a growth model says how many stumps sprout.
pub(super) fn cut(out: &mut Page<'_>, species: &Species, units: Units) {
    let after = phrase::sentence(&super::species_list::after(species));
    fold(out, "after-cut", &m::SPECIES_ONE_AFTER_CUT, &after);
    for said in [
        m::species_basal(species.basal),
        m::species_suckering(species.suckering),
    ] {
        out.p(phrase::sentence(&said) + ".");
    }
    if let Some(first) = species.sprouting.first() {
        let heads = [m::SPECIES_ONE_ACROSS, m::SPECIES_ONE_STUMPS].map(|head| head.to_string());
        let name = phrase::sentence(phrase::tree(species));
        let title = format!("{name}: {}", m::SPECIES_ONE_AFTER_CUT.text());
        out.open_table("vh", &title, &heads);
        for (at, (inches, _)) in first.at.iter().enumerate() {
            let shares = species.sprouting.iter().map(|row| row.at[at].1);
            let (low, high) = shares.fold((1.0_f64, 0.0_f64), |(low, high), share| {
                (low.min(share), high.max(share))
            });
            let across = measure::size(inches * MM_PER_IN);
            out.cell(across.first(units));
            out.cell(m::species_one_stumps_of(words::phrase::percents(low, high)));
        }
        out.close_table();
        out.p_class("soft", m::SPECIES_ONE_STUMPS_NOTE);
    }
    out.close_two();
}

/// Natives that want the same light and water.
pub(super) fn follows(out: &mut Page<'_>, species: &Species, natives: &Natives, home: &str) {
    let Some((site, chosen)) = natives.after(species.scientific) else {
        return;
    };
    let names: Vec<String> = chosen.iter().map(|it| name(it)).collect();
    let key = phrase::row(&names[..names.len().min(3)]);
    fold(
        out,
        "follows",
        &m::SPECIES_ONE_FOLLOWS,
        &phrase::sentence(&key),
    );
    let wants = m::after_light(&site.light).zip(m::after_water(&site.water));
    if let Some((light, water)) = wants {
        out.p(m::species_one_wants(m::SpeciesOneWants {
            light: light.text(),
            water: water.text(),
        }));
    }
    out.open("ul");
    for native in chosen {
        out.open("li");
        out.leaf("b", phrase::sentence(&name(native)));
        out.text(" ");
        out.latin(native.scientific);
        out.text(". ");
        out.text(match (native.mapped, native.shrub) {
            (true, false) => m::species_one_native_tree(native.places),
            (true, true) => m::species_one_native_shrub(native.places),
            (false, false) => m::species_one_listed_tree(native.places),
            (false, true) => m::species_one_listed_shrub(native.places),
        });
        if let Some(branches) = native.branches {
            out.text(" ");
            out.text(m::species_one_branches(branches.round() as usize));
        }
        if let Some(kinds) = native.kinds {
            out.text(" ");
            out.text(m::species_one_kinds(kinds.round() as usize));
        }
        out.close();
    }
    out.close();
    out.p_class("soft", m::SPECIES_ONE_FOLLOWS_NOTE);
    if !site.read {
        out.p_class("soft", m::SPECIES_ONE_FOLLOWS_MEMORY);
    }
    out.open_class("p", "soft");
    out.text(m::SPECIES_ONE_FOLLOWS_FROM);
    for (at, id) in SOURCES.into_iter().enumerate() {
        out.text(if at > 0 { "; " } else { " " });
        out.open("a");
        out.attr("href", &format!("{home}sources/#{id}"));
        let label = natives.sources.get(id).map_or(id, |it| it.label.as_str());
        out.text(english(label));
        out.close();
    }
    out.close();
    out.close_two();
}

fn name(native: &Native) -> String {
    other_tree(native.scientific, native.name)
}
