//! The entry: the page in a browser, the desk tool everywhere else.

fn main() -> std::process::ExitCode {
    #[cfg(target_arch = "wasm32")]
    {
        brimline::page::mount();
        std::process::ExitCode::SUCCESS
    }
    #[cfg(not(target_arch = "wasm32"))]
    brimline::desk::run(std::env::args().skip(1))
}
