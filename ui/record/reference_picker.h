#pragma once

#include <QDialog>
#include <optional>

#include "core/record/reference_choice.h"
#include "core/rules/house_rules.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTableWidget;

namespace wardchalk::ui {

/// Chooses a reference from a ward's own list for the child and the order of the form. The list is searched
/// by medicine; which of its bands serves the child is judged by the core and said in words; where none or
/// several do, nothing can be taken. Another medicine than the ordered one takes a tick that says so.
class ReferencePicker : public QDialog {
  Q_OBJECT

 public:
  ReferencePicker(Child child, Order order, const HouseRules& rules, const Date& today, QWidget* parent);

  /// Shows this list; `name` says which file it is.
  void setList(ReferenceList list, const QString& name);
  /// Searches for a medicine, as if it were typed.
  void search(const QString& part);

  /// What is said of the entry that would be taken, or of why none is.
  [[nodiscard]] QString said() const;

 Q_SIGNALS:
  void taken(const std::vector<wardchalk::WrittenEntry>& entries);
  void listWanted();    ///< another file is to be opened
  void importWanted();  ///< a list is to be made from a table

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* buildFile();
  QWidget* buildSearch();
  QWidget* buildBands();
  QWidget* buildReview();
  QWidget* buildOther();
  QWidget* buildButtons();
  void findAgain();
  void showGroup();
  [[nodiscard]] QString whyNoGroup() const;
  void showBands(const ListGroup& group);
  void addBand(const JudgedEntry& judged, bool chosen);
  void addInfusion(const Reference& reference);
  void followWidth();
  void shareColumns();
  void showChosen();
  void say(const QString& text);
  void setReview(const ListEntry* entry);
  void setOther(const ListGroup* group);
  [[nodiscard]] bool mayTake() const;
  void allowTaking();
  void take();

  Child child_;
  Order order_;
  const HouseRules& rules_;
  Date today_;
  ReferenceList list_;
  std::vector<ListGroup> groups_;
  std::optional<std::size_t> chosen_;
  int chosenRow_ = -1;  // of the bands
  bool narrow_ = false;

  QLabel* file_ = nullptr;
  QLineEdit* search_ = nullptr;
  QListWidget* found_ = nullptr;
  QTableWidget* bands_ = nullptr;
  QLabel* said_ = nullptr;
  QWidget* review_ = nullptr;
  QLabel* pastReview_ = nullptr;
  QCheckBox* useIt_ = nullptr;
  QCheckBox* useOther_ = nullptr;
  QPushButton* take_ = nullptr;
};

}  // namespace wardchalk::ui
