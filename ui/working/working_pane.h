#pragma once

#include <QWidget>
#include <vector>

#include "core/check/shown.h"
#include "ui/theme/board_palette.h"

class QScrollArea;

namespace wardchalk::ui {

class AmountWidget;
class FindingRow;
class FlagWidget;
class SpokenWidget;
class StartPage;
class StepCard;
struct StepView;

/// The right-hand side of the window: the flag, the amount to give, the findings, and the working step by
/// step. It draws from a worksheet and calculates nothing.
class WorkingPane : public QWidget {
  Q_OBJECT

 public:
  static constexpr int leastZoom = 80;
  static constexpr int mostZoom = 300;

  explicit WorkingPane(QWidget* parent = nullptr);

  /// Shows a worksheet; steps that have not changed keep their cards and are neither laid out nor painted
  /// again.
  void show(const Shown& shown);
  using QWidget::show;
  /// Shows what the program does and what to enter first.
  void showEmpty();
  /// Whether the empty pane offers the worked example.
  void offerExample(bool offered);

  /// One column: under flag and amount, which stay in view, the guest stands above findings and steps and
  /// scrolls with them; the start page stands below it. It is as high as it asks for at its width. Null: the
  /// guest is gone, and may stand elsewhere.
  void host(QWidget* guest);
  /// To be told when the guest asks for another height.
  void followGuest();

  /// Size of letters and drawings in percent, kept within 80 to 300.
  void setZoom(int percent);
  [[nodiscard]] int zoom() const { return zoom_; }

  /// Lights every number that comes from this entry; an empty path lights none.
  void light(const QString& path);

  [[nodiscard]] FlagWidget* flag() const { return flag_; }
  [[nodiscard]] AmountWidget* amount() const { return amount_; }
  /// The cards of the working in their order.
  [[nodiscard]] const std::vector<StepCard*>& cards() const { return cards_; }

 Q_SIGNALS:
  /// The entry a number or finding comes from is wanted: a path, "constant:…" or "rule:…". Steps are found
  /// here.
  void originActivated(const QString& path);
  /// A number is pointed at, or none any more.
  void lit(const QString& path);
  void exampleRequested();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void connectParts();
  void showFindings(const Shown& shown);
  void showSteps(const std::vector<StepView>& views);
  void orderFocus();
  void orderTree();
  [[nodiscard]] QList<SpokenWidget*> parts() const;
  void goTo(SpokenWidget* part, Qt::FocusReason reason);
  bool walk(const SpokenWidget* from, int key);
  StepCard* makeCard();
  FindingRow* makeFinding();
  void applyScheme();
  void applyScale();
  void arrange();
  void arrangeOneColumn();
  int pin();
  [[nodiscard]] QWidget* typedAt() const;
  int arrangeColumn(int width, bool amountInColumn);
  int arrangeSteps(int width, int top);
  void showParts(bool visible);
  void moveAmount(bool intoColumn);
  void activate(const QString& origin);

  QWidget* guest_ = nullptr;
  StartPage* start_;
  FlagWidget* flag_;
  AmountWidget* amount_;
  QScrollArea* scroll_;
  QWidget* column_;
  std::vector<FindingRow*> findings_;
  std::vector<StepCard*> cards_;
  Scheme scheme_ = Scheme::light;
  int zoom_ = 100;
  bool empty_ = true;
};

}  // namespace wardchalk::ui
