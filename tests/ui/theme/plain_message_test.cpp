#include "ui/theme/plain_message.h"

#include <QPushButton>
#include <QTest>

#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::plain_message_test {

/// A question comes up while somebody types: what was meant for a field answers nothing.
class PlainMessageTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { box_.reset(); }

  void isNotAnsweredByTyping();
  void isAnsweredByWhatMeansIt_data();
  void isAnsweredByWhatMeansIt();

 private:
  std::unique_ptr<PlainMessage> box_;
  QPushButton* careful_ = nullptr;
  QPushButton* goOn_ = nullptr;
};

void PlainMessageTest::init() {
  box_ = std::make_unique<PlainMessage>(QMessageBox::Question, QStringLiteral("Stop"),
                                        QStringLiteral("Stop it? <b>All</b> is lost."), nullptr);
  careful_ = box_->addButton(QStringLiteral("&Go on entering"), QMessageBox::RejectRole);
  goOn_ = box_->addButton(QStringLiteral("&Stop it"), QMessageBox::DestructiveRole);
  box_->setDefaultButton(careful_);
  box_->setEscapeButton(careful_);
  box_->open();
  QVERIFY(QTest::qWaitForWindowActive(box_.get()));
  QTRY_COMPARE(box_->focusWidget(), careful_);
}

void PlainMessageTest::isNotAnsweredByTyping() {
  QCOMPARE(box_->textFormat(), Qt::PlainText);
  for (const char* typed : {"s", "g", "S", "G", "17.2 mg stops going"})
    for (const char letter : QByteArray(typed))
      if (letter != ' ') QTest::keyClick(box_->focusWidget(), letter);
  QTest::keyClick(box_->focusWidget(), Qt::Key_S, Qt::ShiftModifier);
  QTest::keyClick(box_->focusWidget(), Qt::Key_5, Qt::KeypadModifier);
  QCoreApplication::processEvents();
  QVERIFY(box_->isVisible() && !careful_->isDown() && !goOn_->isDown());
  QVERIFY(!box_->clickedButton());
}

void PlainMessageTest::isAnsweredByWhatMeansIt_data() {
  QTest::addColumn<int>("key");
  QTest::addColumn<bool>("alt");
  QTest::addColumn<bool>("goesOn");
  QTest::newRow("Enter") << int(Qt::Key_Return) << false << false;
  QTest::newRow("Space") << int(Qt::Key_Space) << false << false;
  QTest::newRow("Escape") << int(Qt::Key_Escape) << false << false;
  QTest::newRow("Alt and the letter of the careful one") << int(Qt::Key_G) << true << false;
  QTest::newRow("Alt and the letter of the other") << int(Qt::Key_S) << true << true;
}

void PlainMessageTest::isAnsweredByWhatMeansIt() {
  QFETCH(int, key);
  QFETCH(bool, alt);
  QFETCH(bool, goesOn);
  QTest::keyClick(box_->focusWidget(), static_cast<Qt::Key>(key), alt ? Qt::AltModifier : Qt::NoModifier);
  QTRY_VERIFY(!box_->isVisible());
  QCOMPARE(box_->clickedButton(), static_cast<QAbstractButton*>(goesOn ? goOn_ : careful_));
}

WARDCHALK_QT_TEST(PlainMessageTest)

}  // namespace wardchalk::ui::plain_message_test

#include "plain_message_test.moc"
