#include "ui/theme/flow_layout.h"

#include <QPushButton>
#include <QTest>

#include "tests/ui/support/qt_class.h"
#include "ui/theme/buttons.h"

namespace wardchalk::ui::flow_layout_test {

class FlowLayoutTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void standsInOneRowWhereThereIsRoom();
  void breaksIntoRowsWhereThereIsNone();
  void leavesNoRoomForWhatIsHidden();
  void needsTheHeightOfItsRows();
  void whatIsTiedStandsInOneRow();
  void closesUpWhereOneIsTakenAway();

 private:
  void widen(int width) {
    ground_->resize(width, ground_->heightForWidth(width));
    QCoreApplication::processEvents();
  }

  static QPushButton* add(FlowLayout* flow, const char* text) {
    QPushButton* button = plainButton(QLatin1String(text), text, flow->parentWidget());
    flow->addWidget(button);
    return button;
  }

  std::unique_ptr<QWidget> ground_;
  QPushButton* first_ = nullptr;
  QPushButton* second_ = nullptr;
  QPushButton* last_ = nullptr;
};

void FlowLayoutTest::init() {
  ground_ = std::make_unique<QWidget>();
  auto* flow = new FlowLayout(ground_.get());
  first_ = add(flow, "Back");
  second_ = add(flow, "Skip");
  flow->pushRight();
  last_ = add(flow, "Onwards");
  ground_->show();
}

void FlowLayoutTest::standsInOneRowWhereThereIsRoom() {
  widen(900);
  QCOMPARE(first_->x(), 0);
  QCOMPARE(second_->y(), first_->y());
  QVERIFY(second_->x() > first_->geometry().right());
  QCOMPARE(last_->geometry().right(), 899);
  QCOMPARE(last_->y(), first_->y());
}

void FlowLayoutTest::breaksIntoRowsWhereThereIsNone() {
  widen(ground_->minimumSizeHint().width());
  for (const QPushButton* button : {first_, second_, last_}) {
    QVERIFY(ground_->rect().contains(button->geometry()));
    QVERIFY(button->width() >= button->sizeHint().width());
  }
  QVERIFY(second_->y() > first_->geometry().bottom());
  QVERIFY(last_->y() > second_->geometry().bottom());
}

void FlowLayoutTest::leavesNoRoomForWhatIsHidden() {
  first_->hide();
  widen(900);
  QCOMPARE(second_->x(), 0);
}

void FlowLayoutTest::needsTheHeightOfItsRows() {
  const int one = ground_->heightForWidth(900);
  const int three = ground_->heightForWidth(ground_->minimumSizeHint().width());
  QCOMPARE(three, 3 * one + 2 * 10);
  QCOMPARE(ground_->sizeHint().height(), one);
}

/// There is room for two beside the first, but not for the two that are tied.
void FlowLayoutTest::whatIsTiedStandsInOneRow() {
  QWidget ground;
  auto* flow = new FlowLayout(&ground);
  const QPushButton* before = add(flow, "Back");
  flow->tieNext();
  const QPushButton* left = add(flow, "Left");
  const QPushButton* right = add(flow, "Right");
  ground.show();
  const int width = ground.sizeHint().width() - 1;
  ground.resize(width, ground.heightForWidth(width));
  QCoreApplication::processEvents();
  QVERIFY(left->y() > before->geometry().bottom());
  QCOMPARE(right->y(), left->y());
}

void FlowLayoutTest::closesUpWhereOneIsTakenAway() {
  delete first_;
  widen(900);
  QCOMPARE(second_->x(), 0);
  QCOMPARE(last_->geometry().right(), 899);
}

WARDCHALK_QT_TEST(FlowLayoutTest)

}  // namespace wardchalk::ui::flow_layout_test

#include "flow_layout_test.moc"
