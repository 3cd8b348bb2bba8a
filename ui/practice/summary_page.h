#pragma once

#include <optional>

#include "core/practice/sessions/session_tally.h"
#include "ui/practice/practice_page.h"

class QGridLayout;
class QLabel;
class QPushButton;

namespace wardchalk::ui {

class MistakeBars;

/// What a session came to, and what to practise next.
class SummaryPage : public PracticePage {
  Q_OBJECT

 public:
  explicit SummaryPage(QWidget* parent);

  /// With a seat the session was a teacher's sheet: it is not worked again from here.
  void show(const PracticeSession& session, const std::string& seat, double zoom);
  using QWidget::show;
  /// What it came to, in a sentence or two.
  [[nodiscard]] QString said() const;

 Q_SIGNALS:
  void saveWanted();
  void againWanted();
  /// Practise what the summary proposes.
  void nextWanted(Topic topic);
  void newWanted();
  /// Look at the problems once more.
  void lookWanted();

 private:
  QWidget* buildResults();
  QWidget* buildMistakes();
  QWidget* buildFoot();
  void tellSheet(const PracticeSet& set, const std::string& seat);
  void fillTopics(const SessionTally& tally);
  void tellNext(const SessionTally& tally);

  std::optional<Topic> next_;
  QLabel* title_ = nullptr;
  QLabel* sheet_ = nullptr;
  QLabel* lines_ = nullptr;
  QWidget* topics_ = nullptr;
  QGridLayout* topicGrid_ = nullptr;
  MistakeBars* bars_ = nullptr;
  QLabel* noMistakes_ = nullptr;
  QLabel* nextWords_ = nullptr;
  QPushButton* nextButton_ = nullptr;
  QPushButton* save_ = nullptr;
  QPushButton* again_ = nullptr;
};

}  // namespace wardchalk::ui
