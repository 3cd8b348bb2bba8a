#pragma once

#include <QString>

#include "core/number/refusal.h"
#include "core/record/text_file.h"
#include "ui/form/case_editor.h"
#include "ui/theme/native_path.h"

namespace wardchalk::ui {

/// The file that the open case was read from or saved to, if any.
class CaseDocument {
 public:
  explicit CaseDocument(CaseEditor& editor) : editor_(editor) {}

  [[nodiscard]] const QString& file() const { return file_; }
  /// The name without its folders; empty for a case that has no file.
  [[nodiscard]] QString name() const;

  /// Reads the file whole into the form. A file that is refused leaves form and document as they were.
  [[nodiscard]] Result<Done> open(const QString& file);
  /// These entries take the place of the case; they have no file of their own.
  void openEntries(const std::vector<WrittenEntry>& entries);
  /// The worked example takes the place of the case; it has no file.
  void openExample();
  /// What stood in the file when it was opened or saved here; *nothing* for a case that has no file.
  [[nodiscard]] const KnownFile& known() const { return known_; }
  /// Saves every entry as typed, over what is believed to stand there: `targetChanged` if it does not.
  /// Refuses while a field is refused: a case is never saved in part.
  [[nodiscard]] Result<Done> save(const QString& file, const KnownFile& believed);
  /// Empties the form and forgets the file.
  void clear();

 private:
  void forgetFile();

  CaseEditor& editor_;
  QString file_;
  KnownFile known_ = KnownFile::nothing();
};

}  // namespace wardchalk::ui
