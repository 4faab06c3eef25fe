//! Tags for the trees that are ringed this season, to cut out and hang up: 21 a page, three beside one another.

use super::{OnPaper, Sheets};
use crate::page::Page;
use crate::words::{m, phrase};
use calc::terms::small::order::sort_by;
use calc_plan::plan_file::shape::TreeOf;

/// Tags of a page: seven rows of three.
const OF_A_PAGE: usize = 21;

impl Sheets<'_> {
    /// The tags, in the order of the work.
    #[must_use]
    pub fn tags(&self) -> String {
        let mut ringed: Vec<(&TreeOf, &OnPaper)> = self
            .trees()
            .filter(|(tree, _)| tree.day.is_some())
            .collect();
        sort_by(&mut ringed, |(a, _), (b, _)| {
            (&a.day, a.team, a.order, a.row).cmp(&(&b.day, b.team, b.order, b.row))
        });
        self.page(m::SHEETS_TAGS_TITLE.text(), |page| {
            if ringed.is_empty() {
                page.p(m::SHEETS_NO_TAGS);
            }
            for sheet in ringed.chunks(OF_A_PAGE) {
                page.open_class("div", "sheet tags");
                for (tree, on) in sheet {
                    self.tag(page, tree, on);
                }
                page.close();
            }
        })
    }

    fn tag(&self, page: &mut Page<'_>, tree: &TreeOf, on: &OnPaper) {
        let unit = self.unit();
        page.open_class("section", "tag");
        page.leaf("h2", tree.tree_id.as_str());
        page.open("p");
        page.leaf(
            "b",
            m::sheets_tag_ring([&self.rings(on), " ", unit].concat()),
        );
        page.text([", ", self.up()].concat());
        page.close();
        let (species, size) = (phrase::tree(on.species), self.sizes(on));
        page.p([species, ", ", &size, " ", unit].concat());
        page.p(m::SHEETS_TAG_RINGED_ON);
        let zone = self.distance(tree.zone_m.unwrap_or(on.look_m));
        page.p_class("keep", m::sheets_tag_keep(zone));
        page.close();
    }
}
