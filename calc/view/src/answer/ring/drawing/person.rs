//! A person at work, seen from the side: a hard hat, both hands on the tool at the ring.

use crate::draw::pen::Pen;
use calc::terms::small::decimals::fixed;

/// Drawn so large the person is 5 ft 7 in at the drawing's finest scale. From the left edge to the bark, from the top to
/// the ground, the middle of the feet, and how far the face goes.
pub(super) const REACH: f64 = 178.3;
pub(super) const GROUND: f64 = 372.0;
pub(super) const MIDDLE: f64 = 56.0;
pub(super) const FACE: f64 = 88.0;

/// Limbs behind, limbs in front: the line of the bone, and how thick it is.
const FAR_ARM: (&str, f64) = (
    "M68 108C84 128 94 140 100 148C116 150 130 148 142 145",
    19.0,
);
const FAR_LEG: (&str, f64) = ("M50 206C46 236 44 262 42 284C38 312 32 336 28 354", 28.0);
const NEAR_LEG: (&str, f64) = ("M60 206C66 236 72 260 72 284C72 312 70 336 68 354", 30.0);
const NEAR_ARM: (&str, f64) = ("M56 112C58 134 66 152 76 166C96 166 122 162 140 158", 21.0);
const FAR_BOOT: &str = "M16 352C14 362 14 368 14 372H54C54 366 46 362 40 356Z";
const NEAR_BOOT: &str = "M55 352C53 362 53 368 53 372H98C98 365 88 361 81 355Z";
const COAT: &str = "M45 100C50 91 70 89 77 98C84 112 84 140 82 166C81 184 82 198 84 212C70 218 50 218 37 212C38 190 37 170 38 150C38 130 40 112 45 100Z";
const BELT: &str = "M38 194C52 199 70 199 82 194M38 203C52 208 70 208 83 203";
const NECK: &str = "M53 93C55 84 54 78 53 70L72 72C71 80 71 86 73 93C66 98 59 98 53 93Z";
const HEAD: &str = "M45 44C43 60 47 74 58 80C66 84 76 82 79 77C81 72 80 68 82 65C84 63 87 62 86 60C84 56 83 52 83 44Z";
const EAR_AND_EYE: &str = "M60 56C57 55 55 58 57 62C58 65 61 65 62 62M78 56H82";
const HAT: &str =
    "M41 45C38 22 52 13 65 13C79 13 88 24 88 42L96 45C97 48 95 50 92 50H38C35 50 35 46 38 45Z";
const HAT_RIBS: &str = "M58 14C55 22 55 34 56 44M72 14C75 22 75 34 74 44";
const HANDLE: &str = "M128 160L181 141";
const BLADE: &str = "M176 138L186 132L189 139L179 146Z";
const NEAR_HAND: &str =
    "M133 150C140 146 148 148 149 154C150 162 144 167 137 166C132 164 130 154 133 150Z";
const FAR_HAND: &str =
    "M141 138C147 136 153 138 154 143C154 148 149 152 144 151C139 149 138 141 141 138Z";

/// Draws the person left of a trunk whose bark is at `left`, on the ground, `k` times the largest size.
pub(super) fn person(pen: &mut Pen<'_>, left: f64, ground: f64, k: f64) {
    let (x, y) = (left - REACH * k, ground - GROUND * k);
    pen.out.open("g");
    let moved = cat!(
        "translate(",
        fixed(x, 1),
        " ",
        fixed(y, 1),
        ") scale(",
        fixed(k, 3),
        ")"
    );
    pen.out.attr("transform", &moved);
    limb(pen, FAR_ARM, k);
    limb(pen, FAR_LEG, k);
    pen.path("s fpan", FAR_BOOT);
    limb(pen, NEAR_LEG, k);
    pen.path("s fpan", NEAR_BOOT);
    pen.path("s fpan", COAT);
    pen.path("s1", BELT);
    pen.path("s fpan", NECK);
    pen.path("s fpan", HEAD);
    pen.path("s1", EAR_AND_EYE);
    pen.path("s fwood", HAT);
    pen.path("s", HAT_RIBS);
    limb(pen, NEAR_ARM, k);
    stroke(pen, "limb", HANDLE, 6.0);
    pen.path("s fp", BLADE);
    pen.path("s fp", NEAR_HAND);
    pen.path("s fp", FAR_HAND);
    pen.end();
}

/// A thick round line in ink, and the cloth inside its two edges, which are as fine at every size.
fn limb(pen: &mut Pen<'_>, (bone, thick): (&str, f64), k: f64) {
    stroke(pen, "limb", bone, thick);
    stroke(pen, "limb in", bone, (thick - 4.0 / k).max(1.0));
}

fn stroke(pen: &mut Pen<'_>, class: &str, d: &str, thick: f64) {
    pen.out.open("path");
    pen.out.attr("class", class);
    pen.out.attr("d", d);
    pen.at("stroke-width", thick);
    pen.end();
}
