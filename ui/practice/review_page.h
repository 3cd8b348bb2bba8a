#pragma once

#include "core/practice/sessions/session.h"
#include "ui/practice/practice_page.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace wardchalk::ui {

/// Everything that was written in a test, before it is handed in: each line can still be changed.
class ReviewPage : public PracticePage {
  Q_OBJECT

 public:
  explicit ReviewPage(QWidget* parent);

  void show(const PracticeSession& session, double zoom);
  using QWidget::show;

 Q_SIGNALS:
  void problemWanted(int place);
  void handedIn();

 private:
  void addProblem(const PracticeSession& session, std::size_t place);

  QLabel* open_ = nullptr;
  QVBoxLayout* list_ = nullptr;
  QPushButton* handIn_ = nullptr;
};

}  // namespace wardchalk::ui
