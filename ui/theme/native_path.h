#pragma once

#include <QString>
#include <filesystem>

namespace wardchalk::ui {

/// A file name of the desktop for the readers and writers of the core.
[[nodiscard]] std::filesystem::path nativePath(const QString& file);

}  // namespace wardchalk::ui
