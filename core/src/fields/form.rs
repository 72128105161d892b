//! From rows to a struct and back. [`form!`] and [`choice!`] write struct, rows, reader, writer
//! and sample from one list, so that two lists can't drift apart.

use super::reader::Reader;
use super::row::Row;
use crate::wire::Node;

/// Something one row can hold.
pub trait Field: Sized {
    /// Reads it. `None` after noting a fault.
    fn read(from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> Option<Self>;
    /// The node that reads back as exactly this, with explicit units.
    fn write(&self) -> Node;
}

/// A struct of fields.
pub trait Form: Sized {
    /// One row a field, in order.
    const ROWS: &'static [Row];
    /// With every field at its blank.
    fn blank() -> Self;
    /// Reads all fields, so that every fault is found at once.
    fn read_parts(from: &Node, reader: &mut Reader<'_>) -> Option<Self>;
    /// Writes all fields.
    fn write_parts(&self) -> Node;
}

/// A struct and its rows.
///
/// `name: Type [= blank], row;` a field. The blank is what a missing or hidden field counts as;
/// without one it is the type's default. A quantity that is asked and missing is a fault.
#[macro_export]
macro_rules! form {
    (
        $(#[$meta:meta])*
        $vis:vis struct $name:ident {
            $( $(#[$doc:meta])* $field:ident: $ty:ty $(= $blank:expr)?, $row:expr; )*
        }
        $(sample { $($sampled:ident: $sample:expr),* $(,)? })?
    ) => {
        $(#[$meta])*
        #[derive(Clone, Debug, PartialEq, Eq)]
        $vis struct $name { $( $(#[$doc])* $vis $field: $ty, )* }

        impl $crate::fields::Form for $name {
            const ROWS: &'static [$crate::fields::Row] = &[
                $( $crate::fields::Row { key: stringify!($field), ..$row }, )*
            ];
            fn blank() -> Self {
                Self { $( $field: form!(@blank $($blank)?), )* }
            }
            fn read_parts(
                from: &$crate::wire::Node,
                reader: &mut $crate::fields::Reader<'_>,
            ) -> Option<Self> {
                reader.unknown(Self::ROWS, from);
                $( let $field: Option<$ty> =
                    reader.part(Self::ROWS, stringify!($field), from, || form!(@blank $($blank)?)); )*
                Some(Self { $( $field: $field?, )* })
            }
            fn write_parts(&self) -> $crate::wire::Node {
                $crate::wire::Node::Tree(vec![
                    $( (stringify!($field).to_owned(), $crate::fields::Field::write(&self.$field)), )*
                ])
            }
        }

        impl $crate::fields::Field for $name {
            fn read(
                from: Option<&$crate::wire::Node>,
                _: &'static $crate::fields::Row,
                reader: &mut $crate::fields::Reader<'_>,
            ) -> Option<Self> {
                <Self as $crate::fields::Form>::read_parts(reader.tree(from)?, reader)
            }
            fn write(&self) -> $crate::wire::Node {
                <Self as $crate::fields::Form>::write_parts(self)
            }
        }

        $(
            impl $name {
                /// What the screen opens with, marked as a sample until it is changed.
                $vis fn sample() -> Self {
                    Self { $($sampled: $sample,)* ..<Self as $crate::fields::Form>::blank() }
                }
            }
        )?
    };
    (@blank $blank:expr) => { $blank };
    (@blank) => { Default::default() };
}

/// A choice: an enum whose variants have a key and a label. The first is the blank.
#[macro_export]
macro_rules! choice {
    (
        $(#[$meta:meta])*
        $vis:vis enum $name:ident {
            $( $(#[$doc:meta])* $variant:ident = $key:literal, $label:expr; )*
        }
    ) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        $vis enum $name { $( $(#[$doc])* $variant, )* }

        impl $name {
            /// All of them, in order.
            $vis const ALL: &'static [Self] = &[ $( Self::$variant, )* ];
            /// As a row offers them.
            $vis const PICKS: &'static [$crate::fields::Pick] = &[
                $( $crate::fields::Pick { key: $key, label: &$label }, )*
            ];
            /// As written in the tree.
            $vis const fn key(self) -> &'static str {
                match self { $( Self::$variant => $key, )* }
            }
            /// As a person reads it.
            $vis fn label(self) -> &'static $crate::words::Phrase {
                match self { $( Self::$variant => &$label, )* }
            }
        }

        impl Default for $name {
            fn default() -> Self { Self::ALL[0] }
        }

        impl $crate::fields::Field for $name {
            fn read(
                from: Option<&$crate::wire::Node>,
                row: &'static $crate::fields::Row,
                reader: &mut $crate::fields::Reader<'_>,
            ) -> Option<Self> {
                reader.pick(from, row, Self::PICKS).map(|at| Self::ALL[at])
            }
            fn write(&self) -> $crate::wire::Node {
                $crate::wire::Node::text(self.key())
            }
        }
    };
}
