#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <memory>

namespace wardchalk::console {

/// What a command line asks for; done once all of it has been read.
using Work = std::function<int()>;

/// A subcommand that keeps its options until its work is done.
template <typename Options>
struct Offer {
  CLI::App* command;
  std::shared_ptr<Options> options = std::make_shared<Options>();

  void does(int (*work)(const Options&), Work& chosen) const {
    command->callback([kept = options, work, &chosen] { chosen = [kept, work] { return work(*kept); }; });
  }
};

inline constexpr const char* rulesHelp = "House rules: exact (the default), classroom, or a file";

/// The bedside's commands.
void offerWard(CLI::App& app, Work& chosen);
/// Those of practice; a console may be built without them.
void offerPractice(CLI::App& app, Work& chosen);

}  // namespace wardchalk::console
