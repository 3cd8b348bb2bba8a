#pragma once

#include <string>
#include <vector>

#include "core/number/refusal.h"
#include "core/record/input_file.h"

namespace wardchalk::console {

/// Whether a name stands for standard input or output; a file of that name is called "./-".
[[nodiscard]] bool isStandard(const std::string& file);

/// How a file to be read is called in what is told.
[[nodiscard]] std::string inputName(const std::string& file);

/// Opens the file, or standard input.
[[nodiscard]] Result<InputFile> openInput(const std::string& file);
/// The whole text of the file, or of standard input.
[[nodiscard]] Result<std::string> readInput(const std::string& file);

/// Whether standard input stands for one of these at most; tells when it does not.
[[nodiscard]] bool oneFromInput(const std::vector<std::string>& files);

/// Refuses to write to what is read, whichever of both is a file.
[[nodiscard]] Result<Done> checkNotInput(const std::string& output, const std::string& input);

}  // namespace wardchalk::console
