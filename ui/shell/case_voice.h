#pragma once

#include <QString>
#include <set>
#include <string>
#include <vector>

#include "core/check/shown.h"
#include "core/record/case_draft.h"

class QWidget;

namespace wardchalk::ui {

/// Has a screen reader say what the last entry came to: the new verdict, or why the entry cannot be read.
/// While one is being changed nothing is said, and what was said before is gone. A form that is not full
/// enough for a verdict says nothing line by line; its flag tells what is missing.
class CaseVoice {
 public:
  explicit CaseVoice(QWidget& window) : window_(window) {}

  /// This was typed into a field that was read just now. Where it was understood in other words or another
  /// unit, what `follow` says next tells how.
  void typed(const QString& path, const QString& text);

  /// These are the entries now, and this is what may be seen of their working.
  void follow(const CaseDraft& draft, const Shown& shown);

  /// Everything that there is to say of the case now.
  [[nodiscard]] static QString whole(const CaseDraft& draft, const Shown& shown);

 private:
  /// All that can change what is to be said.
  struct Heard {
    std::vector<WrittenEntry> entries;
    std::set<std::string_view> refused;
    bool changing = false;
    std::string whole;
    friend bool operator==(const Heard&, const Heard&) = default;
  };
  [[nodiscard]] std::string newsOf(const CaseDraft& draft, const Shown& shown,
                                   const std::set<std::string_view>& refusedBefore);
  [[nodiscard]] QString readingOf(const CaseDraft& draft, const Worksheet& sheet);

  QWidget& window_;
  Heard heard_;
  std::vector<WrittenEntry> judged_;  ///< what the text that was said last is about
  std::string said_;
  std::string typedPath_;  ///< of the field that was read last, until it is told how
  QString typed_;
  bool decided_ = false;  ///< there was a verdict when the last entry had been read
};

}  // namespace wardchalk::ui
