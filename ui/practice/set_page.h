#pragma once

#include <optional>

#include "core/practice/sessions/set_file.h"
#include "ui/practice/practice_files.h"
#include "ui/practice/practice_page.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace wardchalk::ui {

class PlanForm;

/// For a preceptor: makes a set for a class, saves it as a file, and puts its questions and its key on paper.
class SetPage : public PracticePage {
  Q_OBJECT

 public:
  SetPage(PracticeFiles& files, QWidget* parent);

  void setPlan(const PracticeSet& plan);
  [[nodiscard]] PracticeSet plan() const;

 Q_SIGNALS:
  void backWanted();

 protected:
  void arrange(int room) override;

 private:
  void buildSchool();
  QWidget* buildFoot();
  void openSet();
  void saveSet();
  void savePdf(bool withKey);
  [[nodiscard]] QString whatIsMissing() const;
  void tellWhatIsMissing();
  void tellRules();
  void setRules(const HouseRules& rules);
  [[nodiscard]] HouseRules rules() const;

  PracticeFiles& files_;
  HouseRules own_;  ///< of an opened file, where they are none of the shipped sets
  PlanForm* form_;
  QLineEdit* title_ = nullptr;
  QComboBox* school_ = nullptr;
  QLabel* schoolWords_ = nullptr;
  QLabel* missing_ = nullptr;
  QComboBox* paper_ = nullptr;
  QPushButton* save_ = nullptr;
  QPushButton* questions_ = nullptr;
  QPushButton* key_ = nullptr;
};

/// Reads a set file; tells why not where it cannot be read.
[[nodiscard]] std::optional<PracticeSet> openSetFile(const QString& file, PracticeFiles& files,
                                                     QWidget* parent);

}  // namespace wardchalk::ui
