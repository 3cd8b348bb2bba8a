#include "ui/access/steady_tips.h"

#include <QAccessible>
#include <QApplication>
#include <QDialog>
#include <QHelpEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>
#include <QToolTip>
#include <QVBoxLayout>

#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::test::steady_tips_test {

/// A tool tip can be looked at as long as one likes, and taken away without anything else.
class SteadyTipsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void initTestCase() { SteadyTips::install(); }
  void init();
  void cleanup();

  void tellsWhatAWidgetAndARowSay();
  void staysWhileThePointerIsOnIt();
  void goesWhenThePointerIsElsewhere();
  void escapeTakesItAwayAndNothingElse();
  void goesAtOnce_data();
  void goesAtOnce();
  void whatHasNoneLeavesItToWhatItLiesIn();
  void nothingOfItStays();

 private:
  [[nodiscard]] QLabel* tip() const;
  void point(QWidget& at, const QPoint& place);
  void moveIn(QWidget& at, const QPoint& place) { QTest::mouseMove(&at, place); }
  void enter(QWidget& at);
  void leave(QWidget& at);

  std::unique_ptr<QDialog> window_;
  QLineEdit* line_ = nullptr;
  QListWidget* list_ = nullptr;
};

void SteadyTipsTest::init() {
  window_ = std::make_unique<QDialog>();
  auto* column = new QVBoxLayout(window_.get());
  line_ = new QLineEdit(window_.get());
  line_->setToolTip(QStringLiteral("From the ward's list."));
  list_ = new QListWidget(window_.get());
  for (const char* words : {"Plover", "Redstart"}) {
    auto* item = new QListWidgetItem(QString::fromUtf8(words), list_);
    item->setToolTip(QStringLiteral("%1, oral").arg(QString::fromUtf8(words)));
  }
  column->addWidget(line_);
  column->addWidget(list_);
  window_->resize(300, 200);
  window_->show();
  QVERIFY(QTest::qWaitForWindowActive(window_.get()));
}

void SteadyTipsTest::cleanup() { window_.reset(); }

QLabel* SteadyTipsTest::tip() const {
  for (QLabel* label : window_->findChildren<QLabel*>(QStringLiteral("tip")))
    if (label->isVisible()) return label;
  return nullptr;
}

void SteadyTipsTest::point(QWidget& at, const QPoint& place) {
  QHelpEvent event(QEvent::ToolTip, place, at.mapToGlobal(place));
  QCoreApplication::sendEvent(&at, &event);
}

void SteadyTipsTest::enter(QWidget& at) {
  QEnterEvent event(QPointF(2, 2), QPointF(2, 2), at.mapToGlobal(QPoint(2, 2)));
  QCoreApplication::sendEvent(&at, &event);
}

void SteadyTipsTest::leave(QWidget& at) {
  QEvent event(QEvent::Leave);
  QCoreApplication::sendEvent(&at, &event);
}

void SteadyTipsTest::tellsWhatAWidgetAndARowSay() {
  point(*line_, {10, 5});
  QVERIFY(tip());
  QCOMPARE(tip()->text(), QStringLiteral("From the ward's list."));
  QVERIFY(!QToolTip::isVisible());
  QAccessibleInterface* read = QAccessible::queryAccessibleInterface(tip());
  QCOMPARE(read->role(), QAccessible::ToolTip);
  QCOMPARE(read->text(QAccessible::Name), tip()->text());
  QWidget& rows = *list_->viewport();
  for (int row = 0; row < list_->count(); ++row) {
    point(rows, list_->visualItemRect(list_->item(row)).center());
    QCOMPARE(tip()->text(), list_->item(row)->toolTip());
  }
}

void SteadyTipsTest::staysWhileThePointerIsOnIt() {
  point(*line_, {10, 5});
  const QPointer<QLabel> shown = tip();
  leave(*line_);
  enter(*shown);
  QTest::qWait(700);  // longer than the way to it may take
  QVERIFY(shown && shown->isVisible());
  leave(*shown);
  enter(*line_);
  QTest::qWait(700);
  QVERIFY(shown && shown->isVisible());
}

void SteadyTipsTest::goesWhenThePointerIsElsewhere() {
  point(*line_, {10, 5});
  leave(*line_);
  QTRY_VERIFY(!tip());
  const QRect first = list_->visualItemRect(list_->item(0));
  point(*list_->viewport(), first.center());
  moveIn(*list_->viewport(), first.center() + QPoint(3, 0));
  QVERIFY(tip());
  moveIn(*list_->viewport(), list_->visualItemRect(list_->item(1)).center());
  QTRY_VERIFY(!tip());
}

void SteadyTipsTest::escapeTakesItAwayAndNothingElse() {
  line_->setFocus();
  point(*line_, {10, 5});
  QTest::keyClick(line_, Qt::Key_A);
  QVERIFY(tip());
  QTest::keyClick(line_, Qt::Key_Escape);
  QVERIFY(!tip());
  QVERIFY(window_->isVisible());
  QCOMPARE(line_->text(), QStringLiteral("a"));
  QTest::keyClick(line_, Qt::Key_Escape);  // the next is the dialog's again
  QVERIFY(!window_->isVisible());
}

void SteadyTipsTest::goesAtOnce_data() {
  QTest::addColumn<QString>("by");
  for (const char* by : {"a click", "its line hides", "its line goes", "its window hides"})
    QTest::newRow(by) << QString::fromUtf8(by);
}

void SteadyTipsTest::goesAtOnce() {
  QFETCH(QString, by);
  point(*line_, {10, 5});
  QVERIFY(tip());
  if (by == QStringLiteral("a click")) QTest::mouseClick(line_, Qt::LeftButton);
  if (by == QStringLiteral("its line hides")) line_->hide();
  if (by == QStringLiteral("its line goes")) delete line_;
  if (by == QStringLiteral("its window hides")) window_->hide();
  QVERIFY(!tip());
}

void SteadyTipsTest::whatHasNoneLeavesItToWhatItLiesIn() {
  line_->setToolTip({});
  window_->setToolTip(QStringLiteral("the whole"));
  point(*line_, {10, 5});
  QVERIFY(tip());
  QCOMPARE(tip()->text(), QStringLiteral("the whole"));
}

void SteadyTipsTest::nothingOfItStays() {
  point(*line_, {10, 5});
  const QPointer<QLabel> shown = tip();
  QTest::mouseClick(line_, Qt::LeftButton);
  QVERIFY(!shown || (shown->text().isEmpty() && shown->accessibleName().isEmpty()));
}

WARDCHALK_QT_TEST(SteadyTipsTest)

}  // namespace wardchalk::ui::test::steady_tips_test

#include "steady_tips_test.moc"
