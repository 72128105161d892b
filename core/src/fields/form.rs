//! From rows to a struct and back. [`form!`] and [`choice!`] write struct, rows, reader, writer
//! and sample from one list, so that two lists can't drift apart.

use super::reader::Reader;
use super::row::Row;
use crate::wire::Node;

/// Something one row can hold. Used as `dyn`, so that the code that walks a form is there once
/// and not once a type.
pub trait Field {
    /// Reads it into `self`, which holds its blank; `false` after noting a fault.
    fn take(&mut self, from: Option<&Node>, row: &'static Row, reader: &mut Reader<'_>) -> bool;
    /// The node that reads back as exactly this, with explicit units.
    fn write(&self) -> Node;
}

/// A struct of fields.
pub trait Form: Sized {
    /// One row a field, in order.
    const ROWS: &'static [Row];
    /// With every field at its blank.
    fn blank() -> Self;
    /// Reads all fields into `self`, so that every fault is found at once; `false` after one. A
    /// field that isn't asked, or may be missing and is, stays as it stands.
    fn take_parts(&mut self, from: &Node, reader: &mut Reader<'_>) -> bool;
    /// Writes all fields.
    fn write_parts(&self) -> Node;
}

/// Named fields as a tree.
pub fn write_all(fields: &[(&str, &dyn Field)]) -> Node {
    Node::Tree(fields.iter().map(|(key, field)| ((*key).to_owned(), field.write())).collect())
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
            fn take_parts(
                &mut self,
                from: &$crate::wire::Node,
                reader: &mut $crate::fields::Reader<'_>,
            ) -> bool {
                reader.parts(Self::ROWS, from, &mut [
                    $( (stringify!($field), &mut self.$field as &mut dyn $crate::fields::Field), )*
                ])
            }
            fn write_parts(&self) -> $crate::wire::Node {
                $crate::fields::write_all(&[
                    $( (stringify!($field), &self.$field as &dyn $crate::fields::Field), )*
                ])
            }
        }

        impl $crate::fields::Field for $name {
            fn take(
                &mut self,
                from: Option<&$crate::wire::Node>,
                _: &'static $crate::fields::Row,
                reader: &mut $crate::fields::Reader<'_>,
            ) -> bool {
                match reader.tree(from) {
                    Some(tree) => <Self as $crate::fields::Form>::take_parts(self, tree, reader),
                    None => false,
                }
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
            fn take(
                &mut self,
                from: Option<&$crate::wire::Node>,
                _: &'static $crate::fields::Row,
                reader: &mut $crate::fields::Reader<'_>,
            ) -> bool {
                let at = reader.pick(from, Self::PICKS);
                if let Some(at) = at {
                    *self = Self::ALL[at];
                }
                at.is_some()
            }
            fn write(&self) -> $crate::wire::Node {
                $crate::wire::Node::text(self.key())
            }
        }
    };
}
