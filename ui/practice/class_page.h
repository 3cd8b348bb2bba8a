#pragma once

#include "core/practice/sessions/set_file.h"
#include "ui/practice/practice_page.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;
class QVBoxLayout;

namespace wardchalk::ui {

/// A set of a teacher's, before it is begun: what it is, and where the student sits. Nothing of the set can
/// be changed here; only where it leaves learning or testing open, that is chosen.
class ClassPage : public PracticePage {
  Q_OBJECT

 public:
  explicit ClassPage(QWidget* parent);

  void show(const PracticeSet& set);
  using QWidget::show;

  [[nodiscard]] const PracticeSet& set() const { return set_; }
  [[nodiscard]] PracticeMode mode() const;
  [[nodiscard]] std::string seat() const;

 Q_SIGNALS:
  void begun();
  void backWanted();

 private:
  QWidget* buildTerms();
  QWidget* buildMode();
  QWidget* buildSeat();
  QWidget* buildFoot();
  void judgeSeat();
  void beginIfSeated();

  PracticeSet set_;
  QLabel* title_ = nullptr;
  QLabel* terms_ = nullptr;
  QWidget* modes_ = nullptr;
  QRadioButton* learning_ = nullptr;
  QRadioButton* test_ = nullptr;
  QLineEdit* seat_ = nullptr;
  QLabel* wrong_ = nullptr;
  QPushButton* begin_ = nullptr;
};

/// What a set fixes, a line each.
[[nodiscard]] QStringList termsInWords(const PracticeSet& set);

}  // namespace wardchalk::ui
