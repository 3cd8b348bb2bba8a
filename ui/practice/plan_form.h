#pragma once

#include <QWidget>
#include <vector>

#include "core/practice/sessions/set_file.h"

class QBoxLayout;
class QButtonGroup;
class QCheckBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace wardchalk::ui {

class RulesChoice;

/// What is to be practised: topics, how hard, how many problems, by which house rules, and the number that
/// the set is drawn by.
class PlanForm : public QWidget {
  Q_OBJECT

 public:
  /// Whom the questions are put to.
  enum class Reader : std::uint8_t { student, preceptor };

  PlanForm(Reader reader, QWidget* parent);

  /// The plan as it stands; without a topic there is none to begin with.
  [[nodiscard]] PracticeSet plan() const;
  void setPlan(const PracticeSet& plan);
  /// What is still to be chosen, in a sentence; empty when the plan is complete.
  [[nodiscard]] QString missing() const;

  /// A further field below "how many" and the set's number. `name` is what a screen reader says.
  void addField(const QString& label, const QString& name, QWidget* field);
  /// A quiet line under the last field.
  QLabel* addNote(const QString& text);
  /// Another column beside the topics: what comes after the fields.
  [[nodiscard]] QBoxLayout* more() const { return more_; }

  /// What comes below the topics.
  [[nodiscard]] QBoxLayout* belowTopics() const { return belowTopics_; }
  /// Tab comes to these after the topics, as the eye does.
  void tabBelowTopics(const QList<QWidget*>& stops);

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
  void buildRules();
  void choose(const std::vector<Topic>& topics);

  Reader reader_;
  QBoxLayout* cards_ = nullptr;
  QGridLayout* topicGrid_ = nullptr;
  int room_ = 0;
  std::vector<QCheckBox*> topics_;
  QButtonGroup* levels_ = nullptr;
  QGridLayout* fields_ = nullptr;
  QSpinBox* count_ = nullptr;
  QLineEdit* seed_ = nullptr;
  RulesChoice* rules_ = nullptr;
  QBoxLayout* more_ = nullptr;
  QBoxLayout* belowTopics_ = nullptr;
  PracticeSet rest_;  ///< title and terms, which are asked for elsewhere
};

}  // namespace wardchalk::ui
