#pragma once

#include "ui/theme/questions.h"

namespace wardchalk::ui {

/// Asks for files; none when none was chosen. A name to write under gets the ending of the filter where none
/// was typed. No name of a folder outlives the program: folders are called by children's names.
[[nodiscard]] QStringList askForFiles(QWidget* parent, const FileQuestion& question);

/// Keeps Qt from writing down folders that were visited, in its own settings for all programs.
void keepFoldersUnwritten();

}  // namespace wardchalk::ui
