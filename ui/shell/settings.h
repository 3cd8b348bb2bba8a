#pragma once

#include <QByteArray>
#include <QSettings>
#include <optional>

#include "core/record/case_draft.h"
#include "ui/paper/paper_format.h"
#include "ui/theme/colours.h"

namespace wardchalk::ui {

/// What is kept between two runs: the window's place and the form's width in it, the size of letters, the
/// colours, the paper, after how long the entries are covered, which reference list, which house rules.
/// Nothing of a case, not even the name of its file. What cannot be read counts as never chosen.
class Settings {
 public:
  /// Kept in this file; with no name, in the user's settings folder.
  explicit Settings(const QString& file = {});

  [[nodiscard]] QByteArray geometry() const;
  void setGeometry(const QByteArray& geometry);
  /// How wide the form was made, in pixels; 0: as wide as it comes.
  [[nodiscard]] int formWidth() const;
  void setFormWidth(int width);
  /// Of the letters in the whole program: percent, 80 to 300.
  [[nodiscard]] int textSize() const;
  void setTextSize(int percent);
  /// Of the whole program.
  [[nodiscard]] Colours colours() const;
  void setColours(Colours colours);
  /// After how many minutes the entries are covered here, where that is sooner than the house rules say.
  [[nodiscard]] std::optional<int> coverMinutes() const;
  void setCoverMinutes(std::optional<int> minutes);
  /// Of sheets that are looked at or saved as PDF.
  [[nodiscard]] PaperSize paper() const;
  void setPaper(PaperSize size);
  /// File of the ward's reference list, which holds nothing of a child; empty when none was opened, or when
  /// it could not be read the last time.
  [[nodiscard]] QString referenceList() const;
  void setReferenceList(const QString& file);
  /// "exact", "classroom" or the file of the house rules chosen last; empty when none was, or when
  /// they could not be read the last time.
  [[nodiscard]] QString rules() const;
  void setRules(const QString& chosen);

 private:
  QSettings store_;
};

inline constexpr int leastTextSize = 80;
inline constexpr int mostTextSize = 300;
inline constexpr int textStep = 10;
/// Source: as a house rule (`idle_minutes`, core/record/rules_file.cpp).
inline constexpr int mostCoverMinutes = 120;

}  // namespace wardchalk::ui
