#pragma once

#include <optional>

#include "core/practice/sessions/set_file.h"
#include "ui/paper/paper_format.h"
#include "ui/practice/practice_page.h"
#include "ui/theme/questions.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace wardchalk::ui {

class PlanForm;
class TermsForm;

/// For a preceptor: makes a set for a class and what is fixed for it, saves it as a file, and puts its
/// questions and its key on paper.
class SetPage : public PracticePage {
  Q_OBJECT

 public:
  SetPage(Questions& questions, PaperSize paper, QWidget* parent);

  void setPlan(const PracticeSet& plan);
  void setPaper(PaperSize size);
  [[nodiscard]] PracticeSet plan() const;

 Q_SIGNALS:
  void backWanted();
  void paperChosen(PaperSize size);

 protected:
  void arrange(int room) override;

 private:
  void buildTitle();
  QWidget* buildFoot(PaperSize paper);
  void openSet();
  void saveSet();
  void savePdf(bool withKey);
  [[nodiscard]] QString whatIsMissing() const;
  void tellWhatIsMissing();

  Questions& questions_;
  PlanForm* form_;
  QLineEdit* title_ = nullptr;
  TermsForm* terms_;
  QLabel* missing_ = nullptr;
  QComboBox* paper_ = nullptr;
  QPushButton* save_ = nullptr;
  QPushButton* questionsPdf_ = nullptr;
  QPushButton* keyPdf_ = nullptr;
};

/// Which set file to open.
[[nodiscard]] FileQuestion openSetQuestion();

/// Reads a set file; tells why not where it cannot be read.
[[nodiscard]] std::optional<PracticeSet> openSetFile(const QString& file, Questions& questions,
                                                     QWidget* parent);

}  // namespace wardchalk::ui
