#include "ui/form/button_flow.h"
#include "ui/practice/practice_look.h"

#include <QPushButton>
#include <QTest>

namespace wardchalk::ui {

class ButtonFlowTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void standsInOneRowWhereThereIsRoom();
  void breaksIntoRowsWhereThereIsNone();
  void leavesNoRoomForWhatIsHidden();
  void needsTheHeightOfItsRows();
  void whatIsTiedStandsInOneRow();

 private:
  void widen(int width) {
    flow_->resize(width, flow_->heightForWidth(width));
    QCoreApplication::processEvents();
  }

  std::unique_ptr<ButtonFlow> flow_;
  QPushButton* first_ = nullptr;
  QPushButton* second_ = nullptr;
  QPushButton* last_ = nullptr;
};

void ButtonFlowTest::init() {
  flow_ = std::make_unique<ButtonFlow>(nullptr);
  first_ = addButton(flow_.get(), QStringLiteral("Back"), "first");
  second_ = addButton(flow_.get(), QStringLiteral("Skip"), "second");
  flow_->pushRight();
  last_ = addButton(flow_.get(), QStringLiteral("Onwards"), "last");
  flow_->show();
}

void ButtonFlowTest::standsInOneRowWhereThereIsRoom() {
  widen(900);
  QCOMPARE(first_->x(), 0);
  QCOMPARE(second_->y(), first_->y());
  QVERIFY(second_->x() > first_->geometry().right());
  QCOMPARE(last_->geometry().right(), 899);
  QCOMPARE(last_->y(), first_->y());
}

void ButtonFlowTest::breaksIntoRowsWhereThereIsNone() {
  widen(flow_->minimumSizeHint().width());
  for (const QPushButton* button : {first_, second_, last_}) {
    QVERIFY(flow_->rect().contains(button->geometry()));
    QVERIFY(button->width() >= button->sizeHint().width());
  }
  QVERIFY(second_->y() > first_->geometry().bottom());
  QVERIFY(last_->y() > second_->geometry().bottom());
}

void ButtonFlowTest::leavesNoRoomForWhatIsHidden() {
  first_->hide();
  widen(900);
  QCOMPARE(second_->x(), 0);
}

void ButtonFlowTest::needsTheHeightOfItsRows() {
  const int one = flow_->heightForWidth(900);
  const int three = flow_->heightForWidth(flow_->minimumSizeHint().width());
  QCOMPARE(three, 3 * one + 2 * 10);
  QCOMPARE(flow_->sizeHint().height(), one);
}

/// There is room for two beside the first, but not for the two that are tied.
void ButtonFlowTest::whatIsTiedStandsInOneRow() {
  ButtonFlow flow(nullptr);
  const QPushButton* before = addButton(&flow, QStringLiteral("Back"), "before");
  flow.tieNext();
  const QPushButton* left = addButton(&flow, QStringLiteral("Left"), "left");
  const QPushButton* right = addButton(&flow, QStringLiteral("Right"), "right");
  flow.show();
  const int width = flow.sizeHint().width() - 1;
  flow.resize(width, flow.heightForWidth(width));
  QCoreApplication::processEvents();
  QVERIFY(left->y() > before->geometry().bottom());
  QCOMPARE(right->y(), left->y());
}

}  // namespace wardchalk::ui

QTEST_MAIN(wardchalk::ui::ButtonFlowTest)
#include "button_flow_test.moc"
