//! The command `tablerig`.

fn main() -> std::process::ExitCode {
    tablerig::cli::main()
}
