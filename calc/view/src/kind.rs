//! The calculators of the family: the same form and the same answer, each with what it asks in front and the
//! parts that it shows. What is not asked in front stays in the folded part of the form, so that nothing that
//! could stop an answer is out of reach; a stop, cautions and what backs an answer stand in all of them.

/// A calculator.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Kind {
    /// The whole plan of one tree.
    #[default]
    TreePlan,
    /// When the bark slips.
    Year,
    /// How wide the ring is.
    Ring,
    /// How far it reaches.
    Reach,
    /// How long the work takes.
    Effort,
    /// When to come back.
    Checks,
}

/// A group of questions of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FormGroup {
    /// Species and size.
    Tree = 1,
    /// Town or state.
    Where = 2,
    /// What it could hit.
    Place = 4,
    /// The day.
    Day = 8,
    /// Crew and walk.
    Work = 16,
}

impl FormGroup {
    /// All of them, in order.
    pub const ALL: [Self; 5] = [Self::Tree, Self::Where, Self::Place, Self::Day, Self::Work];
}

const TREE: u8 = FormGroup::Tree as u8;
const WHERE: u8 = FormGroup::Where as u8;
const PLACE: u8 = FormGroup::Place as u8;
const DAY: u8 = FormGroup::Day as u8;
const WORK: u8 = FormGroup::Work as u8;

/// Name, groups in front.
const TABLE: [(&str, u8); 6] = [
    ("tree-plan", TREE | WHERE | PLACE | DAY),
    ("year", TREE | WHERE | DAY),
    ("ring", TREE | PLACE | DAY),
    ("reach", TREE | PLACE),
    ("effort", TREE | DAY | WORK),
    ("checks", TREE | DAY),
];

impl Kind {
    /// The row of the table.
    fn row(self) -> &'static (&'static str, u8) {
        &TABLE[self as usize]
    }

    /// All of them, in the order of the table.
    pub const ALL: [Self; 6] = [
        Self::TreePlan,
        Self::Year,
        Self::Ring,
        Self::Reach,
        Self::Effort,
        Self::Checks,
    ];

    /// Its name: that of its element behind `slipbark-`, and of its folder under `embed/`.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.row().0
    }

    /// The one of an element's name.
    #[must_use]
    pub fn of_element(tag: &str) -> Self {
        let found = Self::ALL
            .into_iter()
            .find(|kind| tag.ends_with(kind.name()));
        found.unwrap_or_default()
    }

    /// Whether a group of the form stands in front.
    #[must_use]
    pub fn asks(self, group: FormGroup) -> bool {
        self.row().1 & group as u8 != 0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_has_a_name_of_its_own_and_is_found_by_it() {
        for kind in Kind::ALL {
            assert_eq!(Kind::of_element(&["slipbark-", kind.name()].concat()), kind);
            assert!(kind.asks(FormGroup::Tree), "{kind:?}");
        }
        assert_eq!(Kind::of_element("div"), Kind::TreePlan);
    }
}
