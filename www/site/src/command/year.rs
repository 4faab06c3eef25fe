//! `year`: when the bark slips, for one species or for all, as text or CSV.

use crate::command::question::this_year;
use crate::{args, places, terminal};
use anyhow::{Result, bail};
use calc::question::{Found, find_species};
use calc::reference::Reference;
use calc::terms::cite::Grade;
use calc::terms::day::iso;
use calc::terms::species::Species;
use calc::terms::tree::{DrySpell, Vigour};
use calc::timing::{self, Flag, Season, SeasonCase, TreeTiming, Where, climate};
use calc_view::measure::plain;
use calc_view::words::message::pack;
use calc_view::words::season as say;
use calc_view::words::{gap, m, phrase, scientific_of, within};
use std::fmt::Write as _;
use std::process::ExitCode;

/// Runs `year`.
///
/// # Errors
/// A place or a species that is not known: the message says what to type.
pub(crate) fn run(options: &args::Year) -> Result<ExitCode> {
    within(pack(&options.lang), || tell(options))
}

fn tell(options: &args::Year) -> Result<ExitCode> {
    let reference = calc_data::whole();
    let (site, _) = places::find(&options.place)?;
    let stations = &calc_data::places::places().stations;
    let point = climate::at(stations, site, &reference.constants.timing).ok();
    let place = point.as_ref().map_or(Where::Site(site), Where::Climate);
    let year = options.year.unwrap_or_else(this_year);
    let mut flags: Vec<Flag> = Vec::new();
    let mut text = match &options.species {
        Some(name) => {
            let species = species(reference, name)?;
            let season = season(reference, species, place);
            flags.extend(season.flags());
            if options.csv {
                days(species, &season, year)?
            } else {
                words(species, &season, year)
            }
        }
        None => {
            let timed = reference.species.iter().filter(|species| !species.unknown);
            let rows: Vec<_> = timed
                .map(|species| (species, season(reference, species, place)))
                .collect();
            flags.extend(rows.iter().flat_map(|(_, season)| season.flags()));
            flags.retain(|flag| of_place(*flag));
            flags.sort();
            flags.dedup();
            if options.csv {
                windows(&rows, year)?
            } else {
                all(&rows, year)
            }
        }
    };
    let mut notes: Vec<String> = flags
        .iter()
        .map(|flag| m::season_flag(*flag).into())
        .collect();
    notes.extend(climate::meant(stations, site, &reference.constants.timing).map(say::meant));
    for note in notes {
        // A table stays a table.
        if options.csv {
            terminal::tell(&note);
        } else {
            let _ = writeln!(text, "{note}");
        }
    }
    if options.csv {
        terminal::print_as_it_is(&text)?;
    } else {
        terminal::print(&text)?;
    }
    Ok(ExitCode::SUCCESS)
}

fn species(reference: &'static Reference, name: &str) -> Result<&'static Species> {
    match find_species(reference, scientific_of(name).unwrap_or(name), None) {
        Found::One(species) => Ok(species),
        Found::Other(other) => {
            let (tree, group) = (other.names[0], other.group);
            bail!(m::year_not_listed(m::YearNotListed { tree, group }))
        }
        Found::NotHere => bail!(m::year_unknown(name)),
        Found::Like(names) if names.is_empty() => bail!(m::year_unknown_type(name)),
        Found::Like(names) => {
            let names = names
                .iter()
                .map(|like| gap::tree_name(like.scientific, like.name).0);
            let names = names.collect::<Vec<_>>().join("; ");
            bail!(m::year_unknown_like(m::YearUnknownLike { name, names }))
        }
    }
}

/// Whether a flag speaks of the place, whatever the species.
fn of_place(flag: Flag) -> bool {
    matches!(
        flag,
        Flag::FarFromPlaces
            | Flag::ElevationAssumed
            | Flag::ElevationOdd
            | Flag::MildWinter
            | Flag::LowLatitude
            | Flag::HighLatitude
    )
}

fn season(reference: &'static Reference, species: &Species, place: Where<'_>) -> Season<'static> {
    let ask = SeasonCase {
        tree: TreeTiming {
            wood: species.wood,
            f_sum: species.budbreak_sum,
            f_is_estimate: species.budbreak.grade == Grade::Assumption,
        },
        place,
        observed: None,
        spring: &[],
        dry_spell: DrySpell::None,
        dry_in: None,
        growth: Vigour::Ordinary,
    };
    timing::season(&ask, &reference.constants.timing)
}

/// A table as RFC 4180 has it: a head, rows of as many cells, each line ended by CR and LF.
fn table<const N: usize>(
    head: [&str; N],
    rows: impl Iterator<Item = [String; N]>,
) -> Result<String> {
    let mut writer = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .from_writer(Vec::new());
    writer.write_record(head)?;
    for row in rows {
        writer.write_record(row)?;
    }
    Ok(String::from_utf8(writer.into_inner()?)?)
}

/// Each day: date, chance, word.
fn days(species: &Species, season: &Season<'_>, year: i32) -> Result<String> {
    let rows = season.days(year).map(|row| {
        let p = row.probability.map_or(String::new(), |p| format!("{p:.3}"));
        let verdict = m::season_verdict(row.verdict).to_string();
        [species.scientific.to_owned(), iso(row.date), p, verdict]
    });
    table(["scientific_name", "date", "probability", "verdict"], rows)
}

fn words(species: &Species, season: &Season<'_>, year: i32) -> String {
    let mut text = m::year_tree(m::YearTree {
        tree: phrase::tree(species),
        latin: species.scientific,
        year: year.to_string(),
    });
    text.push('\n');
    if !season.is_timed() {
        let _ = writeln!(text, "{}", m::YEAR_NO_BARK);
        return text;
    }
    for span in season.tape(year) {
        let (from, to) = (iso(span.from), iso(span.to));
        let days = m::year_span(m::YearSpan { from, to });
        let _ = writeln!(text, "{days}  {}", m::season_verdict(span.verdict));
    }
    if let Some(dates) = season.dates_of(year) {
        let half = m::year_half(m::YearHalf {
            day: iso(dates.budbreak),
            open: plain(dates.sd_open, 0),
            close: plain(dates.sd_close, 0),
        });
        let _ = writeln!(text, "{half}");
    }
    text
}

/// One row a species: the dates of its window, and their spread in days.
fn windows(rows: &[(&Species, Season<'_>)], year: i32) -> Result<String> {
    let head = [
        "scientific_name",
        "common_name",
        "opens",
        "best_from",
        "best_to",
        "closes",
        "sd_open",
        "sd_close",
    ];
    let rows = rows.iter().map(|(species, season)| {
        let dates = season.dates_of(year).map(|d| {
            let [opens, from, to, closes] = [d.opens, d.best_from, d.best_to, d.closes].map(iso);
            let [open, close] = [d.sd_open, d.sd_close].map(|sd| format!("{sd:.1}"));
            [opens, from, to, closes, open, close]
        });
        let [a, b, c, d, e, f] = dates.unwrap_or_default();
        [
            species.scientific.to_owned(),
            phrase::tree(species).to_owned(),
            a,
            b,
            c,
            d,
            e,
            f,
        ]
    });
    table(head, rows)
}

/// One line a species: the dates of its window.
fn all(rows: &[(&Species, Season<'_>)], year: i32) -> String {
    let head = m::year_all(year.to_string());
    let [opens, from, to] = [m::YEAR_OPENS, m::YEAR_BEST_FROM, m::YEAR_BEST_TO].map(|it| it.text());
    let closes = m::YEAR_CLOSES;
    let mut text = format!("{head:<36} {opens:<10} {from:<10} {to:<10} {closes}\n");
    let mut spreads: Vec<(f64, f64)> = Vec::new();
    for (species, season) in rows {
        let dates = season.dates_of(year);
        let cells = match &dates {
            Some(d) => [d.opens, d.best_from, d.best_to, d.closes]
                .map(iso)
                .join(" "),
            None if season.is_timed() => m::YEAR_NO_DATES.to_string(),
            None => m::YEAR_NO_RING.to_string(),
        };
        spreads.extend(dates.map(|dates| (dates.sd_open, dates.sd_close)));
        let _ = writeln!(text, "{:<36} {cells}", phrase::tree(species));
    }
    if !spreads.is_empty() {
        let ends = |of: fn(&(f64, f64)) -> f64| {
            let (low, high) = spreads
                .iter()
                .map(of)
                .fold((f64::MAX, 0.0_f64), |(low, high), sd| {
                    (low.min(sd), high.max(sd))
                });
            m::year_days(m::YearDays {
                low: plain(low, 0),
                high: plain(high, 0),
            })
        };
        let (open, close) = (ends(|sd| sd.0), ends(|sd| sd.1));
        let spread = m::year_spread(m::YearSpread { open, close });
        let _ = writeln!(text, "{spread}");
    }
    text
}
