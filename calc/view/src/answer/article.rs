//! Where a part of an answer names what an article explains: one quiet link to it (`frame.rs` writes it).

use crate::words::{Word, m};

/// Folder of an article under the home of a language, and what its link says.
pub(super) type Article = (&'static str, Word);

const RING: Article = ("how-wide-and-why", m::READ_RING);
const SEASON: Article = ("when-bark-slips", m::READ_SEASON);
const VISITS: Article = ("after-the-ring", m::READ_VISITS);
const ALIVE: Article = ("is-the-bark-alive", m::READ_ALIVE);
const SPROUTS: Article = ("which-trees-answer-by-suckering", m::READ_SPROUTS);
const STOPS: Article = ("before-you-start", m::READ_STOPS);
const DEAD: Article = ("standing-dead-trees-and-people", m::READ_DEAD);
const PLANT: Article = ("what-to-plant-next", m::READ_PLANT);

/// The names of all articles that answers lead to: those of their folders under `articles/`.
pub fn names() -> impl Iterator<Item = &'static str> {
    let all = [RING, SEASON, VISITS, ALIVE, SPROUTS, STOPS, DEAD, PLANT];
    all.into_iter().map(|(name, _)| name)
}

/// What explains a part, by its id: the first goes before the second. A ring's articles stand where the answer is a ring
/// (`rings`), that of its season where a ring is told of at all.
pub(super) fn of_part(id: &str, rings: bool, about_ring: bool) -> &'static [Article] {
    match id {
        "do" if rings => &[RING],
        "when" if about_ring => &[SEASON, ALIVE],
        "check" if rings => &[VISITS, ALIVE],
        "check" | "meth" => &[SPROUTS],
        "keep" | "reach" | "pro" => &[STOPS],
        "leave" => &[DEAD, PLANT],
        _ => &[],
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_tells_of_no_ring_leads_to_no_article_on_rings() {
        for id in ["do", "when", "check"] {
            let all = of_part(id, false, false);
            assert!(
                !all.iter()
                    .any(|it| [RING.0, SEASON.0, VISITS.0].contains(&it.0)),
                "{id}"
            );
        }
        assert_eq!(of_part("check", true, true)[0].0, "after-the-ring");
        let led: Vec<&str> = ["do", "when", "check", "meth", "keep", "leave"]
            .iter()
            .flat_map(|id| of_part(id, true, true))
            .map(|(name, _)| *name)
            .collect();
        assert!(
            names().all(|name| led.contains(&name)),
            "each is led to: {led:?}"
        );
    }
}
