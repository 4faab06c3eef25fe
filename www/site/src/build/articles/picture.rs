//! The drawing of an article: of an answer to an invented question, or leaves side by side. Made by the drawing code that
//! the calculator has.

use crate::build::{leaf_marks, static_answers};
use anyhow::{Context as _, Result};
use calc::question::Typed;
use calc_view::answer::HostOptions;
use calc_view::answer::figure::{Figure, figure};
use calc_view::draw::plate::Marks;
use calc_view::draw::{mark, plate};
use calc_view::out::{Html, Out};
use calc_view::page::Page;
use calc_view::words::phrase;
use std::path::Path;

/// What is drawn, and what stands under it.
pub(crate) struct Picture {
    of: Of,
    pub(crate) caption: String,
}

enum Of {
    /// A drawing of the answer to an example, by the name of its file.
    Answer(Figure, String),
    /// Leaves or barks, by scientific names.
    Plates(Plate, Vec<String>),
}

type Plate = fn(&mut dyn Out, &Marks, &str);
/// What is drawn of trees side by side.
const PLATES: [(&str, Plate); 2] = [("leaves", plate::leaf), ("barks", plate::bark)];

/// Where the examples are.
const EXAMPLES: &str = "content/examples";

impl Picture {
    /// `reach front_page`, or `leaves Ailanthus altissima; Robinia pseudoacacia`.
    pub(crate) fn of(value: &str, caption: String) -> Result<Self, String> {
        let (kind, what) = value.split_once(' ').unwrap_or((value, ""));
        let what = what.trim();
        if what.is_empty() {
            return Err(format!("picture: \"{value}\" is not as `reach do`"));
        }
        let figure = Figure::ALL.into_iter().find(|it| it.name() == kind);
        let plates = PLATES.into_iter().find(|(name, _)| *name == kind);
        let of = match (figure, plates) {
            (Some(figure), _) => Of::Answer(figure, what.to_owned()),
            (None, Some((_, draw))) => {
                let trees = what.split(';').map(|it| it.trim().to_owned());
                Of::Plates(draw, trees.collect())
            }
            (None, None) => {
                let all = Figure::ALL.map(Figure::name).join(", ");
                return Err(format!(
                    "picture: \"{kind}\" is none of {all}, leaves, barks"
                ));
            }
        };
        Ok(Self { of, caption })
    }

    /// Draws it in the language in use, into a `figure` with its caption. `own` is the folder of a group, with examples
    /// of its own.
    ///
    /// # Errors
    /// An example or a tree that is not there, or an example whose answer has no such drawing.
    pub(crate) fn draw(&self, root: &Path, own: Option<&Path>, home: &str) -> Result<String> {
        let mut html = Html::default();
        mark::defs(&mut html);
        html.open("div");
        html.attr("class", "pictured");
        match &self.of {
            Of::Answer(kind, example) => answer(&mut html, *kind, root, own, example, home)?,
            Of::Plates(draw, trees) => plates(&mut html, root, *draw, trees)?,
        }
        Page::new(&mut html).p_class("soft", self.caption.as_str());
        html.close();
        let drawn = html.into_string();
        anyhow::ensure!(
            drawn.contains("<figure"),
            "picture: the answer has no such drawing"
        );
        Ok(drawn)
    }
}

/// The drawing that stands for the whole site: the trunk of the first page's invented tree, with its ring.
///
/// # Errors
/// An example that is not there, or is no good question any more.
pub(crate) fn of_the_site(root: &Path) -> Result<String> {
    let picture = Picture {
        of: Of::Answer(Figure::Trunk, "front_page".to_owned()),
        caption: String::new(),
    };
    picture.draw(root, None, "")
}

fn answer(
    html: &mut Html,
    kind: Figure,
    root: &Path,
    own: Option<&Path>,
    example: &str,
    home: &str,
) -> Result<()> {
    let file = format!("{example}.json");
    let owned = own.map(|own| own.join("examples").join(&file));
    let path = owned.filter(|path| path.is_file());
    let path = path.unwrap_or_else(|| root.join(EXAMPLES).join(&file));
    let text = std::fs::read_to_string(&path)
        .with_context(|| format!("picture: the example {} can't be read", path.display()))?;
    let typed: Typed = serde_json::from_str(&text)
        .with_context(|| format!("picture: the example {}", path.display()))?;
    let (question, answer) = static_answers::ask(calc_data::whole(), &typed)?;
    let sources = format!("{home}sources/");
    let options = HostOptions {
        heading_level: 3,
        id_prefix: "pic-",
        sources_base: &sources,
        ..HostOptions::default()
    };
    figure(html, kind, calc_data::whole(), &question, &answer, &options);
    Ok(())
}

fn plates(html: &mut Html, root: &Path, draw: Plate, trees: &[String]) -> Result<()> {
    let marks = leaf_marks::read(root)?;
    html.open("div");
    html.attr("class", "plates");
    for scientific in trees {
        let species = calc_data::whole()
            .species
            .iter()
            .find(|species| species.scientific == scientific.as_str())
            .with_context(|| format!("picture: {scientific} is not on the list of trees"))?;
        let name = phrase::sentence(phrase::tree(species));
        html.open("figure");
        draw(html, leaf_marks::of(&marks, scientific)?, &name);
        let out = &mut Page::new(html);
        out.leaf("figcaption", name);
        html.close();
    }
    html.close();
    Ok(())
}
