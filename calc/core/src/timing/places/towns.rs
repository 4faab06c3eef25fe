//! The towns of one country: name, region, position to 0.01° (about 1 km), and how large they are.

use super::{Broken, Reader, Writer, nearest, whole};
use crate::terms::small::find::behind;

const KIND: &[u8; 4] = b"TOWN";
const VERSION: u8 = 1;

/// A town.
#[derive(Debug, Clone, PartialEq)]
pub struct Town {
    /// Its name, as people there write it.
    pub name: String,
    /// ISO 3166-2 code of its state or region (`US-MA`), or the country's where that is not known.
    pub region: String,
    /// Degrees, north positive.
    pub lat: f64,
    /// Degrees, east positive.
    pub lon: f64,
    /// How often 1,000 people have doubled in it, 0–15: 0 up to 2,000, 10 a million. Larger towns are offered first.
    pub size: u8,
}

/// The size class of a population.
#[must_use]
pub fn size(population: u32) -> u8 {
    (population / 1000).max(1).ilog2().min(15) as u8
}

/// Packs the towns of a country, in the order region, quarter degree of latitude, longitude.
#[must_use]
pub fn encode(towns: &[Town]) -> Vec<u8> {
    let mut sorted: Vec<&Town> = towns.iter().collect();
    sorted.sort_by(|a, b| {
        let band = |t: &Town| whole(t.lat, 4.0);
        a.region
            .cmp(&b.region)
            .then(band(a).cmp(&band(b)))
            .then(a.lon.total_cmp(&b.lon))
            .then(a.name.cmp(&b.name))
    });
    let mut regions: Vec<&str> = sorted.iter().map(|t| t.region.as_str()).collect();
    regions.dedup();
    let mut w = Writer::new(KIND, VERSION);
    w.unsigned(sorted.len() as u32);
    w.unsigned(regions.len() as u32);
    w.lines(regions.iter().copied());
    let index = |t: &Town| regions.iter().position(|r| *r == t.region).unwrap_or(0) as i32;
    w.column(sorted.iter().map(|t| index(t)));
    for town in &sorted {
        w.0.push(town.size);
    }
    w.column(sorted.iter().map(|t| whole(t.lat, 100.0)));
    w.column(sorted.iter().map(|t| whole(t.lon, 100.0)));
    w.lines(sorted.iter().map(|t| t.name.as_str()));
    w.0
}

/// Unpacks the towns of a country.
///
/// # Errors
/// [`Broken`] where the bytes are not a whole file of this kind.
pub fn decode(bytes: &[u8]) -> Result<Vec<Town>, Broken> {
    let mut r = Reader::new(bytes, KIND, VERSION)?;
    let (n, many) = (r.count()?, r.count()?);
    let regions = r.lines(many)?;
    let index = r.column(n)?;
    let (sizes, rest) = r.0.split_at_checked(n).ok_or(Broken::WrongLength)?;
    r.0 = rest;
    let (lat, lon) = (r.column(n)?, r.column(n)?);
    let names = r.lines(n)?;
    r.end()?;
    names
        .into_iter()
        .enumerate()
        .map(|(i, name)| {
            let region = usize::try_from(index[i])
                .ok()
                .and_then(|at| regions.get(at))
                .ok_or(Broken::WrongValue)?;
            let (lat, lon) = (f64::from(lat[i]) / 100.0, f64::from(lon[i]) / 100.0);
            if !(-90.0..=90.0).contains(&lat) || !(-180.0..=180.0).contains(&lon) {
                return Err(Broken::WrongValue);
            }
            Ok(Town {
                name,
                region: region.clone(),
                lat,
                lon,
                size: sizes[i],
            })
        })
        .collect()
}

/// The regions of a list of towns as [`decode`] gives it, each with the distance of its nearest town to a point, km.
#[must_use]
pub fn regions_near(towns: &[Town], lat: f64, lon: f64) -> Vec<(String, f64)> {
    nearest(
        &mut towns.iter().map(|t| (t.region.as_str(), t.lat, t.lon)),
        lat,
        lon,
    )
}

/// The towns whose name starts with what was typed, or has a word that does; case, accents, hyphens and points do not
/// matter. A state's letters may follow a comma ("springfield, ma"). At most `most`: whole names first, then the
/// start of a name before the start of a later word, larger towns first.
#[must_use]
pub fn find<'a>(towns: &'a [Town], typed: &str, most: usize) -> Vec<&'a Town> {
    let (typed, state) = match typed.rsplit_once(',') {
        Some((name, state)) => (fold(name), fold(state)),
        None => (fold(typed), String::new()),
    };
    if typed.is_empty() {
        return Vec::new();
    }
    let mut found: Vec<(u8, &Town)> = towns
        .iter()
        .filter(|t| state.is_empty() || fold(&t.region).ends_with(&[" ", state.as_str()].concat()))
        .filter_map(|t| {
            let name = fold(&t.name);
            rank(&name, &typed)
                .or_else(|| rank(&short(&name), &short(&typed)))
                .map(|r| (r, t))
        })
        .collect();
    let key = |(rank, town): &(u8, &'a Town)| (*rank, core::cmp::Reverse(town.size));
    crate::terms::small::sort::sort(&mut found, |a, b| (key(a), &a.1.name) < (key(b), &b.1.name));
    found.into_iter().take(most).map(|(_, t)| t).collect()
}

/// 0: the whole name; 1: its start; 2: the start of a later word.
fn rank(name: &str, typed: &str) -> Option<u8> {
    if name == typed {
        Some(0)
    } else if name.starts_with(typed) {
        Some(1)
    } else {
        // The library's own search of a text in a text costs 2 kB in the browser.
        name.char_indices()
            .any(|(at, letter)| letter == ' ' && behind(name, at + 1).starts_with(typed))
            .then_some(2)
    }
}

/// Words that maps and people shorten.
const SHORT: [(&str, &str); 4] = [
    ("saint", "st"),
    ("sankt", "st"),
    ("mount", "mt"),
    ("fort", "ft"),
];

/// A folded name with these words in their short form.
fn short(name: &str) -> String {
    let words: Vec<&str> = name
        .split(' ')
        .map(|w| {
            SHORT
                .iter()
                .find(|(long, _)| *long == w)
                .map_or(w, |(_, s)| s)
        })
        .collect();
    words.join(" ")
}

/// Small letters without accents; everything that is no letter or digit becomes one space between words.
fn fold(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match plain(letter) {
            Some(plain) => out.push_str(plain),
            None if letter.is_ascii_alphanumeric() => out.push(letter.to_ascii_lowercase()),
            None if letter.is_ascii() => {
                // An apostrophe joins, everything else parts.
                if letter != '\'' && !out.is_empty() && !out.ends_with(' ') {
                    out.push(' ');
                }
            }
            None if letter == '’' || letter == 'ʻ' => {}
            None => out.push(letter),
        }
    }
    if out.ends_with(' ') {
        out.pop();
    }
    out
}

/// The plain letters of an accented one of the languages of these countries.
fn plain(letter: char) -> Option<&'static str> {
    Some(match letter {
        'à' | 'á' | 'â' | 'ã' | 'ä' | 'å' | 'ā' | 'À' | 'Á' | 'Â' | 'Ã' | 'Ä' | 'Å' | 'Ā' => {
            "a"
        }
        'æ' | 'Æ' => "ae",
        'ç' | 'Ç' => "c",
        'è' | 'é' | 'ê' | 'ë' | 'ē' | 'È' | 'É' | 'Ê' | 'Ë' | 'Ē' => "e",
        'ì' | 'í' | 'î' | 'ï' | 'ī' | 'Ì' | 'Í' | 'Î' | 'Ï' | 'Ī' => "i",
        'ñ' | 'Ñ' => "n",
        'ò' | 'ó' | 'ô' | 'õ' | 'ö' | 'ø' | 'ō' | 'Ò' | 'Ó' | 'Ô' | 'Õ' | 'Ö' | 'Ø' | 'Ō' => {
            "o"
        }
        'œ' | 'Œ' => "oe",
        'ù' | 'ú' | 'û' | 'ü' | 'ū' | 'Ù' | 'Ú' | 'Û' | 'Ü' | 'Ū' => "u",
        'ý' | 'ÿ' | 'Ý' => "y",
        'ß' => "ss",
        _ => return None,
    })
}
