#pragma once

#include <QWidget>
#include <vector>

#include "core/words/case_facts.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace wardchalk::ui {

/// What lies over a case that nobody has touched for a while: first a plain page that tells nothing of it,
/// then, when asked for, the facts to be confirmed.
class CoverPage : public QWidget {
  Q_OBJECT

 public:
  explicit CoverPage(QWidget* parent = nullptr);

  /// The page that tells nothing, with how long nobody has typed.
  void cover(int minutes);
  /// The page with what was entered.
  void showFacts(const std::vector<Fact>& facts);
  [[nodiscard]] bool showsFacts() const;
  /// What is asked of the nurse, without the facts.
  [[nodiscard]] QString said() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 Q_SIGNALS:
  void factsWanted();
  void confirmed();
  void newChildWanted();

 private:
  QLabel* title_;
  QLabel* text_;
  QLabel* facts_;
  QPushButton* show_;
  QPushButton* goOn_;
  QPushButton* newChild_;
};

}  // namespace wardchalk::ui
