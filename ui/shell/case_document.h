#pragma once

#include <QString>
#include <filesystem>
#include <optional>

#include "core/number/refusal.h"
#include "core/record/text_file.h"
#include "ui/form/case_editor.h"

namespace wardchalk::ui {

/// A file name of the desktop for the readers of the core.
[[nodiscard]] std::filesystem::path nativePath(const QString& file);

/// The file that the open case was read from or saved to, if any.
class CaseDocument {
 public:
  explicit CaseDocument(CaseEditor& editor) : editor_(editor) {}

  [[nodiscard]] const QString& file() const { return file_; }
  /// The name without its folders; empty for a case that has no file.
  [[nodiscard]] QString name() const;

  /// Reads the file whole into the form. A file that is refused leaves form and document as they were.
  [[nodiscard]] std::optional<Refusal> open(const QString& file);
  /// These entries take the place of the case; they have no file of their own.
  void openEntries(const std::vector<WrittenEntry>& entries);
  /// The worked example takes the place of the case; it has no file.
  void openExample();
  /// What has become of the file since it was opened or saved here.
  [[nodiscard]] FileNow fileNow() const;
  /// Saves every entry as typed. Refuses while a field is refused: a case is never saved in part.
  [[nodiscard]] std::optional<Refusal> save(const QString& file);
  /// Empties the form and forgets the file.
  void clear();

 private:
  void forgetFile();

  CaseEditor& editor_;
  QString file_;
  std::string known_;  // what stood in it when it was opened or saved
};

}  // namespace wardchalk::ui
