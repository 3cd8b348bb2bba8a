#pragma once

#include <QDialog>
#include <vector>

#include "core/practice/lines/chain_builder.h"
#include "core/practice/lines/chain_facts.h"
#include "core/practice/marking/right_values.h"
#include "core/practice/problem/problem.h"

class QLabel;
class QListWidget;
class QPushButton;

namespace wardchalk::ui {

class ChainCanvas;

/// Puts a line together: facts of the papers are chosen, turned over and moved, and units strike out as they
/// meet. What was built is written into the student's line; what it comes to is left to the student.
class LineBuilder : public QDialog {
  Q_OBJECT

 public:
  /// `earlier` are the student's own answers to the lines before: of earlier steps there is nothing else on
  /// the table.
  LineBuilder(const Ask& ask, const Problem& problem, double zoom, QWidget* parent,
              const std::vector<CarriedAnswer>& earlier = {});

  [[nodiscard]] const ChainWork& work() const { return work_; }
  /// The chain as a line, with "=" and room for what it comes to.
  [[nodiscard]] QString line() const;

 private:
  QWidget* buildFacts(const Problem& problem);
  QWidget* buildHandles();
  void bindKeys();
  void addChosenFact();
  void change(ChainWork work, int chosen);
  void turn();
  void move(int direction);
  void remove();
  void root();

  double zoom_;
  std::vector<ChainFact> facts_;
  ChainWork work_;
  QListWidget* list_ = nullptr;
  ChainCanvas* canvas_ = nullptr;
  QLabel* left_ = nullptr;
  std::vector<QPushButton*> handles_;
  QPushButton* write_ = nullptr;
};

}  // namespace wardchalk::ui
