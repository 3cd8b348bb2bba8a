#include <QAbstractButton>
#include <QAction>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QScrollBar>
#include <QTest>

#include "core/record/case_entry.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/field_edit.h"
#include "ui/form/form.h"
#include "ui/shell/action_table.h"

namespace wardchalk::ui::sweep_test {

namespace {

/// The letter after "&" in lower case; null where there is none.
QChar mnemonic(const QString& text) {
  const qsizetype at = text.indexOf(QLatin1Char('&'));
  return at < 0 || at + 1 == text.size() ? QChar() : text[at + 1].toLower();
}

}  // namespace

/// Every widget that a person uses is looked at: its label, its names, and whether the keyboard gets to it.
class SweepTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void everyEntryOfACaseHasItsField();
  void everyFieldHasALabelThatLeadsToIt();
  void everyBoxHasAName();
  void tabReachesEveryBox();
  void enterWalksThroughEveryField();
  void noTwoMnemonicsAreAlike();
  void everyActionHasAPlaceAndAShortcut();
  void noTwoShortcutsAreAlike();
  void boxesAreHighEnough();
  void usualFieldsFitTheWard();
  void nothingIsClippedAtTheLeastWidth();

 private:
  Form* form() { return nurse_->window().findChild<Form*>(); }
  QList<FieldEdit*> fields() { return nurse_->window().findChildren<FieldEdit*>(); }
  void unfold() { form()->setUnfolded(true); }

  std::unique_ptr<Nurse> nurse_;
};

void SweepTest::init() { nurse_ = std::make_unique<Nurse>(); }
void SweepTest::cleanup() { nurse_.reset(); }

void SweepTest::everyEntryOfACaseHasItsField() {
  for (const CaseEntry& entry : caseEntries())
    QVERIFY2(form()->field(QString::fromStdString(std::string(entry.path))), std::string(entry.path).c_str());
  QCOMPARE(static_cast<std::size_t>(fields().size()), caseEntries().size());
}

void SweepTest::everyFieldHasALabelThatLeadsToIt() {
  unfold();
  for (FieldEdit* field : fields()) {
    const auto* flag = field->findChild<QCheckBox*>();
    if (flag) {
      QVERIFY2(!flag->text().isEmpty(), qPrintable(field->path()));
      continue;
    }
    const auto* label = field->findChild<QLabel*>(field->path() + QLatin1String(":label"));
    QVERIFY2(label && !label->text().isEmpty(), qPrintable(field->path()));
    QVERIFY2(label->buddy() && field->stop() == label->buddy(), qPrintable(field->path()));
    QVERIFY2(field->isHidden() || label->isVisible(), qPrintable(field->path()));
  }
}

void SweepTest::everyBoxHasAName() {
  unfold();
  QSet<QString> names;
  for (FieldEdit* field : fields())
    for (QWidget* box : field->findChildren<QWidget*>()) {
      if (box->focusPolicy() == Qt::NoFocus || box->parentWidget() != field) continue;
      QVERIFY2(!box->accessibleName().isEmpty(), qPrintable(box->objectName()));
      QVERIFY2(!names.contains(box->accessibleName()) || field->path().contains(QStringLiteral("schedule")),
               qPrintable(box->accessibleName()));
      names << box->accessibleName();
    }
}

void SweepTest::tabReachesEveryBox() {
  unfold();
  QSet<QWidget*> wanted;
  for (FieldEdit* field : fields())
    if (!field->isHidden()) wanted << field->stop();
  QVERIFY(wanted.size() > 45);
  const QWidget* start = QApplication::focusWidget();
  for (int steps = 0; steps < 400; ++steps) {
    wanted.remove(QApplication::focusWidget());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    if (QApplication::focusWidget() == start) break;
  }
  for (const QWidget* missed : wanted) QVERIFY2(false, qPrintable(missed->objectName()));
}

void SweepTest::enterWalksThroughEveryField() {
  unfold();
  QStringList order;
  for (const FieldSpec& spec : fieldTable()) {
    const QString path = QString::fromStdString(std::string(spec.path));
    if (!form()->field(path)->isHidden() && form()->field(path)->isStop()) order << path;
  }
  form()->focusField(order.first());
  for (const QString& path : order) {
    QVERIFY2(nurse_->focused().startsWith(path + QLatin1Char(':')),
             qPrintable(path + QLatin1Char(' ') + nurse_->focused()));
    nurse_->enter();
  }
}

void SweepTest::noTwoMnemonicsAreAlike() {
  QHash<QChar, QString> seen;  // of the form and the menu bar, which are in view together
  const auto check = [&seen](const QString& text) {
    const QChar letter = mnemonic(text);
    if (letter.isNull()) return true;
    if (seen.contains(letter)) qWarning("%s and %s", qPrintable(seen[letter]), qPrintable(text));
    const bool alone = !seen.contains(letter);
    seen.insert(letter, text);
    return alone;
  };
  for (const QAction* menu : nurse_->window().menuBar()->actions()) QVERIFY(check(menu->text()));
  for (const QLabel* label : form()->findChildren<QLabel*>())
    if (label->buddy()) QVERIFY(check(label->text()));
  for (const QAbstractButton* button : form()->findChildren<QAbstractButton*>())
    QVERIFY(check(button->text()));
  for (QMenu* menu : nurse_->window().menuBar()->findChildren<QMenu*>()) {
    seen.clear();
    for (const QAction* action : menu->actions()) QVERIFY(check(action->text()));
  }
}

void SweepTest::everyActionHasAPlaceAndAShortcut() {
  for (const ActionSpec& spec : actionTable()) {
    const auto* action = nurse_->window().findChild<QAction*>(QLatin1String(spec.name));
    QVERIFY2(action && !action->shortcut().isEmpty(), spec.name);
    QVERIFY2(!action->associatedObjects().isEmpty(), spec.name);
  }
}

void SweepTest::noTwoShortcutsAreAlike() {
  QSet<QString> seen;
  for (const QAction* action : nurse_->window().findChildren<QAction*>())
    for (const QKeySequence& key : action->shortcuts()) {
      QVERIFY2(!seen.contains(key.toString()), qPrintable(key.toString()));
      seen << key.toString();
    }
}

void SweepTest::boxesAreHighEnough() {
  unfold();
  QCoreApplication::processEvents();
  for (FieldEdit* field : fields())
    if (field->stop()->isVisible()) QVERIFY2(field->stop()->height() >= 30, qPrintable(field->path()));
}

/// The usual case in a window of a ward's monitor: no scrolling.
void SweepTest::usualFieldsFitTheWard() {
  nurse_->window().resize(1366, 768);
  // both ends of a range, which fill two lines; both maxima, as needed with its most doses
  const char* usual[] = {"103 cm",
                         "17.2 kg",
                         "4 years",
                         "Plover",
                         "oral",
                         "80 mg",
                         "every 12 h prn",
                         "2",
                         "80-120 mg/m2/dose",
                         "every 12 h",
                         "Plover",
                         "Bench list, p. 4",
                         "300 mg",
                         "600 mg",
                         "3",
                         "liquid",
                         "25 mg in 1 mL"};
  for (const char* text : usual) nurse_->fill({QString::fromUtf8(text)});
  QCOMPARE(nurse_->sheet().verdict, VerdictKind::safe);
  QCoreApplication::processEvents();
  QCOMPARE(nurse_->window().size(), QSize(1366, 768));
  QCOMPARE(form()->verticalScrollBar()->maximum(), 0);
}

void SweepTest::nothingIsClippedAtTheLeastWidth() {
  unfold();
  form()->resize(form()->minimumWidth(), 768);
  QCoreApplication::processEvents();
  for (const QLabel* label : form()->findChildren<QLabel*>()) {
    if (!label->isVisible() || label->wordWrap() || label->text().trimmed().isEmpty()) continue;
    QVERIFY2(label->width() >= label->sizeHint().width(), qPrintable(label->text()));
  }
}

WARDCHALK_QT_TEST(SweepTest)

}  // namespace wardchalk::ui::sweep_test

#include "sweep_test.moc"
