#pragma once

#include <QWidget>
#include <vector>

#include "core/practice/set_file.h"
#include "core/words/phrasebook.h"

class QBoxLayout;
class QButtonGroup;
class QCheckBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace wardchalk::ui {

/// What is to be practised: topics, how hard, how many problems, and the number that the set is drawn by.
class PlanForm : public QWidget {
  Q_OBJECT

 public:
  PlanForm(const Phrasebook& book, QWidget* parent);

  /// The plan as it stands; without a topic there is none to begin with.
  [[nodiscard]] PracticeSet plan() const;
  void setPlan(const PracticeSet& plan);
  [[nodiscard]] bool isComplete() const;

  /// Another column beside the topics: what comes after "how many".
  [[nodiscard]] QBoxLayout* more() const { return more_; }

  /// How wide the form may be; where its two cards do not fit side by side, one stands below the other.
  void setRoom(int width);

 Q_SIGNALS:
  void changed();

 protected:
  bool event(QEvent* event) override;

 private:
  void arrange();
  QWidget* buildTopics();
  QWidget* buildRest();
  void buildLevels(QBoxLayout* column);
  void buildNumbers(QBoxLayout* column);
  void choose(const std::vector<Topic>& topics);

  const Phrasebook& book_;
  QBoxLayout* cards_ = nullptr;
  QGridLayout* topicGrid_ = nullptr;
  int room_ = 0;
  std::vector<QCheckBox*> topics_;
  QButtonGroup* levels_ = nullptr;
  QSpinBox* count_ = nullptr;
  QLineEdit* seed_ = nullptr;
  QBoxLayout* more_ = nullptr;
  PracticeSet rest_;  ///< title and house rules, which are asked for elsewhere
};

}  // namespace wardchalk::ui
