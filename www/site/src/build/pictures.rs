//! The pictures that programs show beside a link to a page (Open Graph, `og:image`): its own drawings, on paper of 1200 × 630
//! points, without a word, so that every language has the same. What was drawn once is kept by its digest.

use crate::build::assets::{File, hex};
use crate::build::kept::kept;
use crate::build::species_pages::{self, Facts};
use anyhow::{Context, Result, anyhow, bail};
use calc_view::draw::mark;
use calc_view::draw::plate::{self, Marks};
use calc_view::out::{Html, Out};
use rayon::prelude::*;
use resvg::{tiny_skia, usvg};
use sha2::{Digest as _, Sha256};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// Width and height, points: what programs that show links ask for.
pub(crate) const SIZE: [u32; 2] = [1200, 630];
/// The picture of every page that has none of its own.
pub(crate) const COMMON: &str = "picture.png";
/// How finely colours are told apart: steps from none to all of one.
const STEPS: u32 = 31;
/// Raised when the same drawing comes out otherwise: what was kept before is drawn anew.
const WAY: &str = "1";

/// Where the picture of a page in a folder lies: `pictures/species/norway-maple.png`.
pub(crate) fn path(folder: &str) -> String {
    format!("pictures/{}.png", folder.trim_end_matches('/'))
}

/// A picture before it is drawn: where it will lie, and all of its SVG.
pub(crate) struct Planned {
    pub(crate) path: String,
    svg: String,
}

/// What is drawn of: the sheets of the drawings, with the colours of light paper in them.
pub(crate) struct Easel {
    style: String,
    paper: String,
    ink: String,
}

impl Easel {
    /// Reads the style sheets of the drawings.
    ///
    /// # Errors
    /// A sheet that can't be read, or a colour that it does not say.
    pub(crate) fn read(root: &Path) -> Result<Self> {
        let read = |name: &str| {
            let file = format!("www/style/{name}");
            std::fs::read_to_string(root.join(&file))
                .with_context(|| format!("{file} could not be read"))
        };
        let (tokens, drawing) = (read("tokens.css")?, read("parts/drawing.css")?);
        let tokens = tokens
            .split_once(":root {")
            .and_then(|it| it.1.split_once('}'));
        let tokens = tokens
            .context("www/style/tokens.css does not begin with :root")?
            .0;
        let tokens: BTreeMap<&str, &str> = tokens
            .lines()
            .filter_map(|line| line.trim().strip_suffix(';')?.split_once(": "))
            .collect();
        // A rule in a line: what stands in a block of its own is for screens of some width, as is what stands there for others.
        let rules = drawing
            .lines()
            .filter(|line| line.starts_with(['.', 's']) && !line.contains("display: none"));
        let style = rules.collect::<Vec<_>>().join("\n");
        let colour = |name| plain(&format!("var({name})"), &tokens);
        Ok(Self {
            style: plain(&style, &tokens)?,
            paper: colour("--paper")?,
            ink: colour("--ink")?,
        })
    }

    /// The picture of a page in `folder` with drawings in boxes: x, y, width and height of each.
    fn plan(&self, path: String, drawings: &[(&str, [f64; 4])]) -> Planned {
        let Self { style, paper, ink } = self;
        let [wide, high] = SIZE;
        let mut defs = Html::default();
        mark::defs(&mut defs);
        let mut svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{wide}\" height=\"{high}\" color=\"{ink}\">\
             <style>{style}</style>{}<rect width=\"{wide}\" height=\"{high}\" fill=\"{paper}\"/>",
            defs.into_string()
        );
        for (drawing, [x, y, width, height]) in drawings {
            let at = format!("x=\"{x}\" y=\"{y}\" width=\"{width}\" height=\"{height}\"");
            let (tag, rest) = drawing.split_once('>').unwrap_or((drawing, ""));
            // Its own size is for a page: a box here has another.
            let tag = without(&without(tag, "width"), "height");
            svg.push_str(&tag.replacen("<svg", &format!("<svg {at}"), 1));
            svg.push('>');
            svg.push_str(rest);
        }
        svg.push_str("</svg>");
        Planned { path, svg }
    }

    /// The picture of a species: its leaf, and beside it its twig, fruit, bark and the sign of the site. None where it has no plates.
    pub(crate) fn species(&self, facts: &Facts) -> Option<Planned> {
        let marks = facts.marks()?;
        let drawn = |draw: fn(&mut dyn Out, &Marks, &str)| {
            let mut html = Html::default();
            draw(&mut html, marks, "");
            html.into_string()
        };
        let leaf = drawn(plate::leaf);
        let mut small = vec![drawn(plate::fruit), drawn(plate::bark)];
        if species_pages::has_twig(marks) {
            small.insert(0, drawn(plate::twig));
        }
        let mut brand = Html::default();
        mark::brand(&mut brand);
        let brand = brand.into_string();
        let mut drawings = vec![(leaf.as_str(), [40.0, 25.0, 560.0, 580.0])];
        let places = [[620.0, 25.0], [890.0, 25.0], [620.0, 325.0], [890.0, 325.0]];
        let mut places = places.into_iter();
        for plate in &small {
            drawings.extend(
                places
                    .next()
                    .map(|[x, y]| (plate.as_str(), [x, y, 270.0, 280.0])),
            );
        }
        drawings.push((brand.as_str(), [980.0, 420.0, 90.0, 90.0]));
        Some(self.plan(path(&facts.folder), &drawings))
    }

    /// The picture of a page in `folder` from the markup of its figures: the widest drawing, or several side by side. None
    /// where there is none.
    pub(crate) fn figure(&self, path: String, html: &str) -> Option<Planned> {
        let all: Vec<&str> = drawings(html).collect();
        let wide = all.iter().find(|it| it.starts_with("<svg class=\"d wide"));
        if let Some(wide) = wide.or(all.first().filter(|_| all.len() == 1)) {
            return Some(self.plan(path, &[(wide, [60.0, 40.0, 1080.0, 550.0])]));
        }
        let width = 1120.0 / all.len() as f64;
        let places = (0..all.len()).map(|at| [40.0 + width * at as f64, 40.0, width, 550.0]);
        let placed: Vec<_> = all.iter().copied().zip(places).collect();
        (!placed.is_empty()).then(|| self.plan(path, &placed))
    }
}

/// A tag without one of its attributes.
fn without(tag: &str, name: &str) -> String {
    let before = format!(" {name}=\"");
    let Some((front, rest)) = tag.split_once(&before) else {
        return tag.to_owned();
    };
    front.to_owned() + rest.split_once('"').map_or("", |(_, behind)| behind)
}

/// The drawings in some markup: each `svg` of the class `d`, which may hold others.
fn drawings(html: &str) -> impl Iterator<Item = &str> {
    // The class `defs` begins like it.
    let begins = html.match_indices("<svg class=\"d");
    let begins = begins.filter(|(at, found)| html[at + found.len()..].starts_with(['"', ' ']));
    begins.map(|(at, _)| {
        let rest = &html[at..];
        let mut open = 0;
        let end = rest.match_indices("svg").find_map(|(at, tag)| {
            if rest[..at].ends_with('<') {
                open += 1;
            } else if rest[..at].ends_with("</") {
                open -= 1;
                return (open == 0).then_some(at + tag.len() + 1);
            }
            None
        });
        &rest[..end.unwrap_or(rest.len())]
    })
}

/// A text of a style sheet with the values of the tokens in place of their names.
fn plain(text: &str, tokens: &BTreeMap<&str, &str>) -> Result<String> {
    let mut text = text.to_owned();
    while let Some(begin) = text.find("var(") {
        let end = begin + text[begin..].find(')').context("a var( without its end")?;
        let name = &text[begin + "var(".len()..end];
        let Some(value) = tokens.get(name) else {
            bail!("www/style/tokens.css does not say {name}, which a drawing has");
        };
        text.replace_range(begin..=end, value);
    }
    Ok(text)
}

/// Draws them all, on all processors; each from the folder that keeps them if it is there, else put there.
///
/// # Errors
/// A drawing that is no SVG, or has more colours than a picture may.
pub(crate) fn draw(planned: &[Planned], folder: &Path) -> Result<Vec<File>> {
    let one = |it: &Planned| {
        let name = format!("{}.png", hex(&Sha256::digest(format!("{WAY} {}", it.svg))));
        let bytes = kept(&folder.join(name), || png(&it.svg)).with_context(|| it.path.clone())?;
        Ok(File::named(&it.path, bytes))
    };
    let all: Vec<Result<File>> = planned.par_iter().map(one).collect();
    all.into_iter().collect()
}

/// The folder that keeps them for the project at `root`.
pub(crate) fn cache(root: &Path) -> PathBuf {
    crate::project::target(root).join("pictures")
}

/// An SVG as a PNG with a palette.
fn png(svg: &str) -> Result<Vec<u8>> {
    let tree = usvg::Tree::from_str(svg, &usvg::Options::default())?;
    let [wide, high] = SIZE;
    let mut points = tiny_skia::Pixmap::new(wide, high).context("no room for the picture")?;
    resvg::render(&tree, tiny_skia::Transform::default(), &mut points.as_mut());
    let mut palette: BTreeMap<[u8; 3], u8> = BTreeMap::new();
    let step = |part: u8| ((u32::from(part) * STEPS + 127) / 255 * 255 / STEPS) as u8;
    let mut indices = Vec::with_capacity(points.pixels().len());
    for point in points.pixels() {
        let colour = [point.red(), point.green(), point.blue()].map(step);
        let next = palette.len();
        let index = match palette.get(&colour) {
            Some(index) => *index,
            None => {
                let index = u8::try_from(next).map_err(|_| anyhow!("it has too many colours"))?;
                palette.insert(colour, index);
                index
            }
        };
        indices.push(index);
    }
    let mut colours = vec![[0; 3]; palette.len()];
    for (colour, index) in palette {
        colours[usize::from(index)] = colour;
    }
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, wide, high);
    encoder.set_color(png::ColorType::Indexed);
    encoder.set_palette(colours.concat());
    encoder.set_compression(png::Compression::High);
    encoder.set_filter(png::Filter::NoFilter);
    encoder.write_header()?.write_image_data(&indices)?;
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::project;

    #[test]
    fn a_picture_has_its_size_its_paper_and_what_is_drawn_and_the_same_drawing_gives_the_same_bytes()
    -> Result<()> {
        let easel = Easel::read(&project::root()?)?;
        let figure = "<svg class=\"defs\"></svg><figure><svg class=\"d wide\" viewBox=\"0 0 10 10\" width=\"9\"><svg x=\"1\"></svg>\
                      <rect class=\"fband\" width=\"10\" height=\"10\"/></svg></figure>";
        let planned = easel
            .figure(path("articles/a/"), figure)
            .context("it has a drawing")?;
        let bytes = png(&planned.svg)?;
        assert_eq!(bytes, png(&planned.svg)?);
        let mut decoder = png::Decoder::new(std::io::Cursor::new(&bytes));
        decoder.set_transformations(png::Transformations::EXPAND);
        let mut reader = decoder.read_info()?;
        assert_eq!([reader.info().width, reader.info().height], SIZE);
        let mut points = vec![0; reader.output_buffer_size().context("it fits")?];
        reader.next_frame(&mut points)?;
        let at = |x: usize, y: usize| &points[(y * SIZE[0] as usize + x) * 3..][..3];
        // --paper and --band of tokens.css, in steps of an eighth of a hundred.
        let near = |point: &[u8], wanted: [u8; 3]| {
            point.iter().zip(wanted).all(|(a, b)| a.abs_diff(b) <= 8)
        };
        assert!(near(at(5, 5), [0xfc, 0xfb, 0xf7]), "{:?}", at(5, 5));
        assert!(near(at(600, 315), [0x15, 0x5a, 0x92]), "{:?}", at(600, 315));
        assert!(easel.figure(path("x/"), "<p>no drawing</p>").is_none());
        assert!(png("<svg").is_err());
        Ok(())
    }
}
