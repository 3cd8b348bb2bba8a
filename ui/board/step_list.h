#pragma once

#include <QListWidget>

#include "ui/board/board_story.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

/// The steps by number and question, to jump to one. It tells no answer.
class StepList : public QListWidget {
  Q_OBJECT

 public:
  StepList(QWidget* parent, const BoardStory& story);

  /// Lists the pages of the story as they are now.
  void fill(const BoardStory& story);
  /// Shows the list over the board with this page chosen.
  void open(int page, Scheme scheme);

 Q_SIGNALS:
  void chosen(int page);
  void closed();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  void style(Scheme scheme);
  void choose();
  void close();
};

}  // namespace wardchalk::ui
