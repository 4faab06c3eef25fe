//! Marks by which a tree is told: leaf, bud, fruit and bark, as words from closed sets. A key asks for them and drawings
//! are made from them.

use super::words::words;

words! {
    /// How leaves stand on the twig, needles in their bundles.
    pub enum Arrangement {
        /// One at a time.
        Alternate,
        /// In pairs.
        Opposite,
        /// Three and more round the twig.
        Whorled,
        /// Needles one at a time.
        Single,
        /// Needles in tufts.
        Tuft,
        /// Needles in twos.
        Bundle2 = "bundle2",
        /// Needles in threes.
        Bundle3 = "bundle3",
        /// Needles in fives.
        Bundle5 = "bundle5",
        /// Scales that lie on the twig.
        Scales,
        /// All at the top of the stem: palms, yuccas.
        Crown,
    }
}

words! {
    /// What a leaf is.
    pub enum LeafKind {
        /// One blade.
        Simple,
        /// Three leaflets.
        Trifoliate,
        /// Leaflets on both sides of a stalk.
        Pinnate,
        /// Divided twice.
        Bipinnate,
        /// A needle.
        Needle,
        /// A scale.
        Scale,
        /// A blade as of grass.
        Blade,
        /// A sword.
        Sword,
        /// A fan.
        Fan,
        /// A feather.
        Feather,
    }
}

words! {
    /// The edge of a leaf or leaflet.
    pub enum Margin {
        /// No teeth.
        Smooth,
        /// No teeth, but waves.
        Wavy,
        /// Small teeth.
        Fine,
        /// Large teeth.
        Coarse,
        /// Rounded teeth.
        Blunt,
        /// Teeth on teeth.
        Double,
        /// Teeth with a bristle.
        Bristle,
        /// Spines.
        Spiny,
        /// One to five teeth at the foot of a leaflet.
        Gland,
    }
}

words! {
    /// How a leaf is lobed.
    pub enum Lobing {
        /// It is not.
        None,
        /// Some leaves have a thumb.
        Mitten,
        /// Lobes as fingers of a hand.
        Palmate,
        /// Lobes along both sides.
        Pinnate,
    }
}

words! {
    /// What runs out of a snapped stalk.
    pub enum Sap {
        /// Clear.
        Clear,
        /// White.
        Milky,
        /// Resin.
        Resin,
    }
}

words! {
    /// Why nobody should touch it: asked before anybody snaps a stalk.
    pub enum Touch {
        /// Its sap burns.
        ToxicSap = "toxic sap",
        /// It gives a rash.
        Rash,
        /// It is poisonous.
        Poison,
    }
}

words! {
    /// Thorns.
    pub enum Thorns {
        /// None.
        None,
        /// One at a bud.
        Single,
        /// Two at a bud.
        Pair,
        /// Branched.
        Branched,
        /// Small and scattered.
        Prickles,
        /// A short side twig that ends in a thorn.
        Spur,
        /// The twig's own end.
        TwigTip,
        /// On the leaf.
        LeafSpines,
        /// On its stalk.
        StalkSpines,
    }
}

words! {
    /// Winter buds.
    pub enum Buds {
        /// Small and round.
        RoundSmall,
        /// Fat and blunt.
        BluntFat,
        /// Woolly.
        Woolly,
        /// Small and sharp.
        SharpSmall,
        /// Hidden.
        Hidden,
        /// Silver.
        Silver,
        /// Without scales, fuzzy.
        NakedFuzzy,
        /// Pointed, of many scales.
        ScalyPointed,
        /// White scales.
        WhiteScaly,
        /// Long and sharp.
        SharpSlender,
        /// Sticky.
        Sticky,
        /// One scale.
        OneScale,
        /// On a stalk.
        Stalked,
        /// Several at the twig's end.
        Clustered,
        /// A spear.
        Spear,
        /// White hairs.
        WhiteHairy,
        /// Two scales.
        TwoScale,
        /// A duck's bill.
        DuckBill,
        /// Brown velvet.
        BrownVelvet,
        /// Large and loose.
        LargeLoose,
        /// One alone at the top.
        OneBud,
        /// Silky.
        Silky,
        /// Lopsided and red.
        LopsidedRed,
    }
}

words! {
    /// What kind of fruit it bears.
    pub enum Fruit {
        /// A pair of wings.
        WingedPair,
        /// One wing.
        WingedSingle,
        /// A wing all round.
        WingedRound,
        /// Wings in a cone that falls apart.
        WingedCone,
        /// A pod.
        Pod,
        /// A pod as long as a hand and more.
        PodLong,
        /// A capsule.
        Capsule,
        /// A woody capsule.
        CapsuleWoody,
        /// Cotton.
        Cotton,
        /// A berry.
        Berry,
        /// A stone fruit.
        Drupe,
        /// As an apple.
        Pome,
        /// A mulberry.
        Mulberry,
        /// A nut in a bur.
        NutBur,
        /// A nut in a husk.
        NutHusk,
        /// A nut with a bract.
        NutBract,
        /// As hops.
        Hop,
        /// An acorn.
        Acorn,
        /// A cone.
        Cone,
        /// A cone that stands up.
        ConeUpright,
        /// A red fleshy cone.
        ConeRed,
        /// A cone as a berry.
        BerryCone,
        /// A small woody cone.
        WoodyCone,
        /// A birch's cone.
        BirchCone,
        /// A fuzzy ball.
        BallFuzzy,
        /// A spiny ball.
        BallSpiny,
        /// A green ball.
        BallGreen,
        /// A grain.
        Grain,
    }
}

words! {
    /// How the bark of an old stem looks.
    pub enum BarkPattern {
        /// Smooth.
        Smooth,
        /// Smooth and pale.
        SmoothPale,
        /// Ridges as a net.
        NetRidges,
        /// Flat ridges.
        FlatRidges,
        /// Scales.
        Scaly,
        /// Furrows.
        Furrowed,
        /// Flakes that leave patches.
        FlakingPatches,
        /// Lines across.
        CrossLines,
        /// Plates.
        Plates,
        /// Strips that peel.
        PeelingStrips,
        /// Curls that peel.
        PeelingCurls,
        /// Cork.
        Corky,
        /// Orange above.
        OrangeTop,
        /// Strings.
        Stringy,
        /// Shags.
        Shaggy,
        /// Blocks.
        Blocks,
        /// Shreds.
        Shreddy,
        /// Leaf bases.
        LeafBases,
        /// Rings.
        Rings,
        /// Canes.
        Cane,
        /// As muscles.
        Muscle,
        /// Warts.
        Warty,
        /// No bark: an herb.
        Herb,
        /// A vine.
        Vine,
    }
}

words! {
    /// What a crushed leaf or scraped twig smells of.
    pub enum Smell {
        /// Nothing.
        None,
        /// Rank.
        Rank,
        /// Camphor.
        Camphor,
        /// Pepper.
        Pepper,
        /// Turpentine.
        Turpentine,
        /// Resin.
        Resin,
        /// Almond.
        Almond,
        /// Sweet.
        Sweet,
        /// Wintergreen.
        Wintergreen,
        /// Citrus.
        Citrus,
        /// Walnut.
        Walnut,
    }
}

words! {
    /// When its leaves come, beside other trees of the place.
    pub enum LeafOutTime {
        /// Among the first.
        Early,
        /// With most.
        Mid,
        /// Among the last.
        Late,
        /// It keeps them.
        Evergreen,
    }
}

words! {
    /// The outline of a blade or leaflet.
    pub enum Shape {
        /// Long and narrow, widest below the middle.
        Lance,
        /// Round.
        Round,
        /// An egg, widest below the middle.
        Ovate,
        /// A heart.
        Heart,
        /// Widest in the middle.
        Elliptic,
        /// An egg, widest above the middle.
        Obovate,
        /// Sides that run side by side.
        Oblong,
        /// A diamond.
        Diamond,
        /// A needle.
        Needle,
        /// A scale.
        Scale,
        /// A triangle.
        Triangle,
        /// A star.
        Star,
        /// A square.
        Square,
        /// A sickle.
        Sickle,
        /// A fan.
        Fan,
        /// A feather.
        Feather,
        /// Long, as wide at the foot as higher up.
        Linear,
    }
}

words! {
    /// The foot of a blade or leaflet.
    pub enum Base {
        /// One side lower than the other.
        Lopsided,
        /// A heart.
        Heart,
        /// Round.
        Rounded,
        /// Both sides alike, among trees known for a lopsided one.
        Even,
        /// A wedge.
        Wedge,
        /// Square.
        Square,
        /// Ears.
        Ears,
        /// It sits on the twig.
        Stalkless,
    }
}

words! {
    /// The tip of a blade or leaflet.
    pub enum Tip {
        /// Long and drawn out.
        DrawnOut,
        /// Pointed.
        Pointed,
        /// Round.
        Rounded,
        /// Notched.
        Notched,
        /// Blunt.
        Blunt,
        /// A spine.
        Spine,
        /// A bristle.
        Bristle,
    }
}

words! {
    /// How much shade it bears.
    pub enum ShadeTolerance {
        /// Little.
        Intolerant,
        /// Some.
        Intermediate,
        /// Much.
        Tolerant,
    }
}

words! {
    /// How much water it uses.
    pub enum MoistureUse {
        /// Little.
        Low,
        /// Some.
        Medium,
        /// Much.
        High,
    }
}
