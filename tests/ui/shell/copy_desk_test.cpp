#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QMenu>
#include <QMimeData>
#include <QTest>

#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/working/step_card.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui::copy_desk_test {

class CopyDeskTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() {
    nurse_ = std::make_unique<Nurse>();
    nurse_->press(Qt::Key_F2);
    QApplication::clipboard()->clear();
  }
  void cleanup() { nurse_.reset(); }

  void copiesTheWorkingInEveryForm_data();
  void copiesTheWorkingInEveryForm();
  void copiesTheStepThatHasTheKeyboard();
  void noStepIsCopiedBeforeOneIsGoneTo();
  void noPictureIsCopiedBeforeThereIsAStep();
  void theMenuKeyOffersTheStep();
  void aRightClickOffersTheStepUnderIt();
  void aStepThatIsGoneIsNotCopied();

 private:
  QAction* action(const char* name) { return nurse_->window().findChild<QAction*>(QLatin1String(name)); }
  QMenu* menu() { return nurse_->window().findChild<QMenu*>(QStringLiteral("copy-step-as")); }
  WorkingPane* pane() { return nurse_->window().findChild<WorkingPane*>(); }
  StepCard* card(StepId id) {
    for (StepCard* each : pane()->cards())
      if (each->view().step.id == id) return each;
    return nullptr;
  }
  static const QMimeData* copied() { return QApplication::clipboard()->mimeData(); }

  std::unique_ptr<Nurse> nurse_;
};

void CopyDeskTest::copiesTheWorkingInEveryForm_data() {
  QTest::addColumn<QString>("name");
  QTest::addColumn<QString>("format");
  QTest::addColumn<QString>("begins");
  QTest::newRow("text") << "copy-working"
                        << "text/plain"
                        << "";
  QTest::newRow("MathML") << "copy-working-mathml"
                          << "application/xhtml+xml"
                          << "<?xml";
  QTest::newRow("LaTeX") << "copy-working-latex"
                         << "application/x-tex"
                         << "\\documentclass";
  QTest::newRow("drawing") << "copy-working-svg"
                           << "image/svg+xml"
                           << "<?xml";
  QTest::newRow("picture") << "copy-working-picture"
                           << "application/x-qt-image"
                           << "";
}

void CopyDeskTest::copiesTheWorkingInEveryForm() {
  QFETCH(QString, name);
  QFETCH(QString, format);
  QFETCH(QString, begins);
  action(qPrintable(name))->trigger();
  QVERIFY2(copied()->hasFormat(format), qPrintable(copied()->formats().join(u' ')));
  if (!begins.isEmpty()) QVERIFY(QString::fromUtf8(copied()->data(format)).startsWith(begins));
}

void CopyDeskTest::copiesTheStepThatHasTheKeyboard() {
  card(StepId::give)->setFocus();
  action("copy-step-latex")->trigger();
  QVERIFY(copied()->text().contains(QStringLiteral("\\cancel{\\text{mg}}")));
  QVERIFY(copied()->text().contains(QStringLiteral("\\text{3.2}")));
  nurse_->press(Qt::Key_F5);  // back in the form, the step stays chosen
  action("copy-step")->trigger();
  QVERIFY(copied()->text().contains(QStringLiteral("How many mL do you give?")));
  action("copy-step-picture")->trigger();
  QVERIFY(copied()->hasImage());
}

void CopyDeskTest::noStepIsCopiedBeforeOneIsGoneTo() {
  QVERIFY(!action("copy-step")->isEnabled());
  card(StepId::bsa)->setFocus();
  QVERIFY(action("copy-step")->isEnabled());
}

void CopyDeskTest::noPictureIsCopiedBeforeThereIsAStep() {
  nurse_->dialogs().answer = Unsaved::discard;
  action("new-child")->trigger();
  for (const char* name : {"copy-working-picture", "copy-working-svg"}) {
    QApplication::clipboard()->setText(QStringLiteral("before"));
    action(name)->trigger();
    QCOMPARE(copied()->text(), QStringLiteral("before"));
  }
}

void CopyDeskTest::theMenuKeyOffersTheStep() {
  StepCard* give = card(StepId::give);
  give->setFocus();
  QContextMenuEvent wanted(QContextMenuEvent::Keyboard, give->rect().center(),
                           give->mapToGlobal(give->rect().center()));
  QApplication::sendEvent(give, &wanted);
  QTRY_VERIFY(menu()->isVisible());
  for (const QAction* offered : menu()->actions())
    QVERIFY2(offered->isEnabled(), qPrintable(offered->text()));
  menu()->close();
  action("copy-step-mathml")->trigger();
  QVERIFY(copied()->text().contains(QStringLiteral("<menclose")));
}

void CopyDeskTest::aRightClickOffersTheStepUnderIt() {
  StepCard* bsa = card(StepId::bsa);
  QContextMenuEvent wanted(QContextMenuEvent::Mouse, QPoint(20, 20), bsa->mapToGlobal(QPoint(20, 20)));
  QApplication::sendEvent(bsa, &wanted);
  QTRY_VERIFY(menu()->isVisible());
  menu()->close();
  action("copy-step")->trigger();
  QVERIFY(copied()->text().contains(QStringLiteral("What is the body surface area (BSA)?")));
}

void CopyDeskTest::aStepThatIsGoneIsNotCopied() {
  card(StepId::give)->setFocus();
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_F5);
  nurse_->walkTo(QStringLiteral("order.dose"));
  nurse_->press(Qt::Key_A, Qt::ControlModifier);
  nurse_->type(QStringLiteral("90"));
  nurse_->enter();  // unsafe now: nothing to measure
  QVERIFY(!card(StepId::give));
  QTRY_VERIFY(!action("copy-step")->isEnabled());
}

WARDCHALK_QT_TEST(CopyDeskTest)

}  // namespace wardchalk::ui::copy_desk_test

#include "copy_desk_test.moc"
