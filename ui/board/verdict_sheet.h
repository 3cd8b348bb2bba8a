#pragma once

#include <QWidget>
#include <vector>

#include "core/words/amount_words.h"
#include "ui/board/board_sizes.h"
#include "ui/board/board_story.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

class AmountText;
class FlagWidget;

/// The last thing a board uncovers: the flag, and under it the amount, why there is none, or the questions
/// that come before it. It takes neither keyboard nor mouse, and exists only while it is shown.
class VerdictSheet : public QWidget {
  Q_OBJECT

 public:
  VerdictSheet(QWidget* parent, const BoardStory& story, Scheme scheme);

  /// Sets everything as large as the room allows.
  void fit(const QRectF& within, const BoardSizes& sizes);
  [[nodiscard]] double scale() const { return scale_; }
  void setScheme(Scheme scheme);

  [[nodiscard]] FlagWidget* flag() const { return flag_; }
  [[nodiscard]] const std::vector<AmountText*>& lines() const { return lines_; }

 private:
  void addLine(const AmountWords& words);
  int heightAt(int width, double scale);
  double largestScale(int width, double room, double most);

  FlagWidget* flag_;
  std::vector<AmountText*> lines_;
  double scale_ = 1;
};

/// All that the sheet says, read aloud.
[[nodiscard]] QString verdictSpoken(const BoardStory& story);

}  // namespace wardchalk::ui
