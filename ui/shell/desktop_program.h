#pragma once

namespace wardchalk::ui {

/// The desktop program: `wardchalk [CASE.json]`, `--board CASE.json`, `--picture CASE.json OUT.png`,
/// `--version`, `--help`. The result is the exit status: 0 done, 2 wrong usage or an unreadable file.
[[nodiscard]] int runDesktop(int argc, char** argv);

}  // namespace wardchalk::ui
