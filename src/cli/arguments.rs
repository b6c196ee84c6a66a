//! The command line.

use std::path::PathBuf;
use std::prelude::rust_2024::*;

use clap::{Args, CommandFactory, FromArgMatches, Parser, Subcommand, ValueEnum};

use super::advise::AdviseFlags;
use super::ask::AskCommand;
use super::draw::DrawFlags;
use super::set::SetFlags;
use super::sheet::SheetFlags;
use super::sweep::SweepFlags;
use super::whole::{ChooseFlags, WholeFlags};
use super::wording::Units;

const ABOUT: &str = "Where the camera must be for a tabletop picture, and whether what holds it will stand";

const LONG_ABOUT: &str = "\
Where the camera must be for a tabletop picture, and whether what holds it will stand.

A shoot file (TOML, or the same as JSON) names cameras, lenses, tables, subjects, supports and bays once, and \
lists the shots. tablerig plans them: heights and distances, the boom's reach, what the frame takes in, what is \
sharp, and how far the stand is from tipping. Without a command it plans a built-in demo.";

const EXAMPLES: &str = "\
Examples:
  tablerig                                      plan the built-in demo
  tablerig example > shoot.toml                 write the demo as a file to start from
  tablerig plan shoot.toml --units in           plan your own, in inches
  tablerig shot soup shoot.toml                 one shot in full
  tablerig choose loaf shoot.toml               which lens, support and side take it, and why
  tablerig fit shoot.toml                       whether the shots fit the bay, and how
  tablerig book shoot.toml                      the room to ask for and everything to pull
  tablerig order shoot.toml                     the order with the least re-rigging
  tablerig sheet shoot.toml -o sheet.html       the sheet to print, a page a shot
  tablerig draw soup shoot.toml -o drawings     its three drawings as SVG
  tablerig set soup shoot.toml --sensor-distance '155 cm +- 5 mm' \\
      --elevation '59.8° +- 0.3°' --write
  tablerig sweep elevation --from 30 --to 90 --step 10 --shot soup shoot.toml
  tablerig ask magnification --focal-length 100mm --sensor 36 --sensor-distance 60cm
  tablerig advise --diameter 19cm --height 85mm --judged-by contents
  tablerig plan shoot.toml --json               every number in full, for programs; mistakes too

Exit status: 0 all shots can be rigged, 1 some shot cannot be done as asked (a stop caution), does not fit or is \
not set within its tolerances, or a question has no answer, 2 the input is wrong, 3 the \
output could not be written. order, book, sheet, draw and sweep answer with 0 and mark such shots.

The figures are computed: makers' ratings, local codes and a qualified rigger decide.";

/// The whole command line.
#[derive(Debug, Parser)]
#[command(name = "tablerig", version, about = ABOUT, long_about = LONG_ABOUT, after_help = EXAMPLES)]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) command: Option<Command>,
    #[command(flatten)]
    pub(crate) output: Output,
}

impl Arguments {
    /// What the command line says.
    pub(crate) fn read() -> Result<Arguments, clap::Error> {
        let matches = negative_numbers(Arguments::command()).try_get_matches()?;
        Arguments::from_arg_matches(&matches)
    }
}

/// Lets every quantity be negative, with its unit too: `--bearing -30°`. Whether it may be is told by its range.
fn negative_numbers(command: clap::Command) -> clap::Command {
    const QUANTITIES: &[&str] =
        &["LENGTH", "ANGLE", "RATIO", "VALUE", "LENGTH±LENGTH", "ANGLE±ANGLE", "W[xH]"];
    let negative = |argument: clap::Arg| {
        let names = argument.get_value_names().unwrap_or_default();
        let quantity = names.iter().any(|name| QUANTITIES.contains(&name.as_str()));
        argument.allow_hyphen_values(quantity)
    };
    command.mut_args(negative).mut_subcommands(negative_numbers)
}

/// How the answer is printed.
#[derive(Clone, Copy, Debug, Args)]
#[command(next_help_heading = "Output")]
pub(crate) struct Output {
    /// Unit of printed lengths
    #[arg(long, global = true, value_enum, default_value_t = Units::Cm)]
    pub(crate) units: Units,
    /// Print JSON with every number in full (mm, deg, kg, N), whatever --units says; a sheet, drawing or shoot file
    /// that is printed stays what it is; where something is wrong, {"mistakes": [...]}, each with kind, number,
    /// sentence, field, value, least, most, line and column
    #[arg(long, global = true)]
    pub(crate) json: bool,
    /// Colour the text; auto: only on a terminal, and not where NO_COLOR is set
    #[arg(long, global = true, value_enum, default_value_t = Color::Auto)]
    pub(crate) color: Color,
}

/// When to colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Color {
    Auto,
    Always,
    Never,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Plan every shot of a file
    Plan {
        #[command(flatten)]
        file: File,
    },
    /// Show one shot in full
    Shot {
        /// The shot's name
        name: String,
        #[command(flatten)]
        file: File,
    },
    /// Choose lens, support and side for a shot, and say why the others lost
    Choose(ChooseFlags),
    /// Whether the shots fit their bay, and where in it the table may stand
    Fit(WholeFlags),
    /// The room to book and everything to pull
    Book(WholeFlags),
    /// The order of shots with the least re-rigging
    Order(WholeFlags),
    /// On the set: what a shot now is from what was measured, and which way to correct it
    Set(SetFlags),
    /// Draw a shot from the side, from above and as the lens sees it
    Draw(DrawFlags),
    /// The sheet to print and hang on the stand: overview, then a page a shot
    Sheet(SheetFlags),
    /// Ask the other way round: from what was measured or found, to what it means
    #[command(subcommand)]
    Ask(AskCommand),
    /// Advise on the elevation for a subject
    Advise(AdviseFlags),
    /// Vary one quantity of a shot and compare
    Sweep(SweepFlags),
    /// List every key of a shoot file with unit, range, default and meaning
    Fields {
        /// Only those of one kind: shoot, camera, lens, table, subject, support, bay, criteria, kit, weights, order, shot
        /// or log
        kind: Option<String>,
    },
    /// Print the built-in demo as a shoot file
    Example,
}

/// Where the shoot file is.
#[derive(Clone, Debug, Args)]
pub(crate) struct File {
    /// Shoot file, TOML or JSON; - for standard input; the built-in demo when left out
    #[arg(value_name = "FILE")]
    pub(crate) path: Option<PathBuf>,
}
