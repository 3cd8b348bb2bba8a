#pragma once

#include "core/practice/sessions/session.h"
#include "ui/practice/practice_page.h"

class QLabel;
class QPushButton;
class QRadioButton;

namespace wardchalk::ui {

class PlanForm;

/// Where practice begins: what, how hard, how many, and whether to learn or to be tested.
class PlanPage : public PracticePage {
  Q_OBJECT

 public:
  explicit PlanPage(QWidget* parent);

  void setPlan(const PracticeSet& plan);
  [[nodiscard]] PracticeSet plan() const;
  [[nodiscard]] PracticeMode mode() const;

 Q_SIGNALS:
  void begun();
  void openWanted();
  void makeSetWanted();

 protected:
  void arrange(int room) override;

 private:
  void buildMode();
  QWidget* buildFoot();
  void tellWhatIsMissing();

  PlanForm* form_;
  QRadioButton* learning_ = nullptr;
  QRadioButton* test_ = nullptr;
  QLabel* missing_ = nullptr;
  QPushButton* begin_ = nullptr;
};

}  // namespace wardchalk::ui
