#include "ui/form/form.h"

#include <QAccessible>
#include <QCheckBox>
#include <QClipboard>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/answer_line.h"
#include "ui/form/field_edit.h"
#include "ui/form/form_group.h"

namespace wardchalk::ui::form_test {

namespace {

QString pathOf(std::string_view path) {
  return QString::fromUtf8(path.data(), static_cast<qsizetype>(path.size()));
}

}  // namespace

class FormTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup();

  void enterGoesToTheNextFieldAndShiftEnterBack();
  void whatWasReadStandsInTheSafeForm();
  void noPauseAndNoListChangesAUnit();
  void aSentenceForAnotherFieldIsRefusedByName_data();
  void aSentenceForAnotherFieldIsRefusedByName();
  void theArrowWritesAUnitAsText();
  void theMenuOpensByKeyAndNoLetterChoosesInIt();
  void altEnterTakesTheSafeForm();
  void aReferenceWithoutPerIsAskedWithTwoButtons();
  void whatFillsOtherLinesGoesOnBehindThem_data();
  void whatFillsOtherLinesGoesOnBehindThem();
  void aFilledLineIsNotPassedFromElsewhere();
  void enterPassesOverTicks();
  void spaceTicksNothingOnTheWay();
  void openingAPartGoesIntoItsFirstField();
  void aTextSetFromOutsideIsReadAtOnce();
  void aDroppedOrPastedTextIsPendingUntilItIsLeft();
  void composingMakesAFieldPending();
  void theMenuOfALineOffersTheFormsHistory();
  void aBareHeightShowsItsUnitBeforeTyping();
  void aRefusalMovesNoFieldBesideIt();
  void nothingMovesWhileTheMouseIsDown();
  void theEndsOfTheReferenceSayWhatTheyComeTo();
  void leavingAFieldReadsIt();
  void anotherWindowDoesNotEndTheTyping();
  void theLastFieldSaysPressEnter();
  void refusedTextStaysWithItsReason();
  void aPastedUnseenCharacterStaysAndIsRefused_data();
  void aPastedUnseenCharacterStaysAndIsRefused();
  void unsafeAbbreviationsAreAnswered_data();
  void unsafeAbbreviationsAreAnswered();
  void everyKeyReachesTheBox();
  void readBackOfADose();
  void rarerFieldsUnfoldWithTheirGroup();
  void aFieldThatComesIntoViewLaterHasItsPlace();
  void aFoldedFieldThatHoldsSomethingIsInView();
  void powderAsksForItsMixing();
  void undoKeyGoesToTheFormsHistory();
  void nothingIsChosenBeforehand();

 private:
  QWidget* at() const { return QApplication::focusWidget(); }
  void go(std::string_view path) { form_->focusField(pathOf(path)); }
  void type(const char* text) { QTest::keyClicks(at(), QString::fromUtf8(text)); }
  void enter(Qt::KeyboardModifiers with = Qt::NoModifier) { QTest::keyClick(at(), Qt::Key_Return, with); }
  QString line(std::string_view path) const { return form_->field(pathOf(path))->line(); }
  template <typename T>
  T* box(const char* name) const {
    return form_->findChild<T*>(QString::fromLatin1(name));
  }

  std::unique_ptr<CaseEditor> editor_;
  std::unique_ptr<Form> form_;
};

void FormTest::init() {
  editor_ = std::make_unique<CaseEditor>();
  form_ = std::make_unique<Form>(*editor_, exactRules());
  form_->resize(480, 720);
  form_->show();
  QVERIFY(QTest::qWaitForWindowActive(form_.get()));
  go(path::height);
}

void FormTest::cleanup() {
  form_.reset();
  editor_.reset();
}

void FormTest::enterGoesToTheNextFieldAndShiftEnterBack() {
  type("103 cm");
  enter();
  QCOMPARE(at()->objectName(), QStringLiteral("child.weight:text"));
  enter(Qt::ShiftModifier);
  QCOMPARE(at()->objectName(), QStringLiteral("child.height:text"));
}

void FormTest::whatWasReadStandsInTheSafeForm() {
  type("3 ft 5 in");
  enter();
  QCOMPARE(box<QLineEdit>("child.height:text")->text(), QStringLiteral("3 ft 5 in"));
  QCOMPARE(line(path::height), QStringLiteral("= 104.14 cm"));
  go(path::age);
  type("4yrs");
  enter();
  QCOMPARE(box<QLineEdit>("child.age:text")->text(), QStringLiteral("4 years"));
}

/// H41: "240", then m, a pause, g: milligrams, or a refusal, and never grams.
void FormTest::noPauseAndNoListChangesAUnit() {
  go(path::dose);
  type("240 m");
  form_->field(pathOf(path::dose))->focusFirst();  // whatever happens in a pause
  QTest::keyClick(at(), Qt::Key_End);
  type("g");
  enter();
  QCOMPARE(editor_->draft().text(path::dose), std::string("240 mg"));
}

void FormTest::aSentenceForAnotherFieldIsRefusedByName_data() {
  QTest::addColumn<QString>("path");
  for (const FieldSpec& spec : fieldTable())
    if (spec.kind == FieldKind::quantity && spec.path != path::schedule &&
        spec.path != path::referenceSchedule)
      QTest::newRow(std::string(spec.path).c_str()) << pathOf(spec.path);
}

/// H42: a schedule typed a field too early changes nothing but that field, and is refused there.
void FormTest::aSentenceForAnotherFieldIsRefusedByName() {
  QFETCH(QString, path);
  form_->focusField(path);
  type("every 6 h");
  enter();
  for (const FieldSpec& spec : fieldTable())
    QCOMPARE(editor_->draft().state(spec.path),
             pathOf(spec.path) == path ? FieldState::refused : FieldState::empty);
}

void FormTest::theArrowWritesAUnitAsText() {
  go(path::weight);
  type("17.2");
  QTest::keyClick(at(), Qt::Key_Down, Qt::AltModifier);
  auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
  QVERIFY(menu);
  QCOMPARE(editor_->draft().state(path::weight), FieldState::pending);  // a menu is not leaving
  menu->actions().first()->trigger();
  menu->close();
  QCOMPARE(box<QLineEdit>("child.weight:text")->text(), QStringLiteral("17.2 kg"));
  go(path::height);
  QCOMPARE(editor_->draft().text(path::weight), std::string("17.2 kg"));
}

void FormTest::theMenuOpensByKeyAndNoLetterChoosesInIt() {
  go(path::route);
  QTest::keyClick(at(), Qt::Key_F4);
  auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
  QVERIFY(menu);
  for (const int key : {Qt::Key_O, Qt::Key_I, Qt::Key_E}) QTest::keyClick(menu, static_cast<Qt::Key>(key));
  QVERIFY(menu->isVisible());
  QVERIFY(!menu->activeAction());
  QTest::keyClick(menu, Qt::Key_Escape);
  QVERIFY(editor_->draft().isEmpty());
}

void FormTest::altEnterTakesTheSafeForm() {
  go(path::weight);
  type(".5 kg");
  enter();
  go(path::weight);
  enter(Qt::AltModifier);
  QCOMPARE(editor_->draft().text(path::weight), std::string("0.5 kg"));
  go(path::weight);
  type("1,5 kg");
  enter();
  go(path::weight);
  enter(Qt::AltModifier);  // a comma has no safe form
  QCOMPARE(editor_->draft().state(path::weight), FieldState::refused);
  QCOMPARE(box<QLineEdit>("child.weight:text")->text(), QStringLiteral("1,5 kg"));
}

void FormTest::aReferenceWithoutPerIsAskedWithTwoButtons() {
  go(path::high);
  type("15 mg/kg");
  enter();
  const QList<QPushButton*> buttons = form_->field(pathOf(path::high))->answer()->buttons();
  QCOMPARE(buttons.size(), 2);
  QTest::mouseClick(buttons.last(), Qt::LeftButton);
  QCOMPARE(editor_->draft().text(path::high), std::string("15 mg/kg/day"));
  QVERIFY(!form_->field(pathOf(path::high))->isRefused());
}

/// A range fills both ends, and what is typed next never takes the place of the end that it filled.
void FormTest::whatFillsOtherLinesGoesOnBehindThem_data() {
  QTest::addColumn<QString>("typed");
  QTest::addColumn<int>("key");
  QTest::addColumn<QString>("next");
  for (const auto& [name, key] : {std::pair{"Enter", Qt::Key_Return}, std::pair{"Tab", Qt::Key_Tab}}) {
    const auto row = [&](const char* what, const QString& typed, std::string_view next) {
      QTest::addRow("%s, %s", what, name) << typed << int(key) << pathOf(next);
    };
    row("one end", QStringLiteral("10 mg/kg/dose"), path::high);
    row("a range", QStringLiteral("10 to 20 mg/kg/dose"), path::referenceSchedule);
  }
}

void FormTest::whatFillsOtherLinesGoesOnBehindThem() {
  QFETCH(const QString, typed);
  QFETCH(const int, key);
  QFETCH(const QString, next);
  go(path::low);
  type(typed.toUtf8().constData());
  QTest::keyClick(at(), Qt::Key(key));
  QCOMPARE(at()->objectName(), next + QStringLiteral(":text"));
  const std::string high = editor_->draft().line(path::high);
  type("every 8 h");
  enter();
  if (next == pathOf(path::referenceSchedule)) {
    QCOMPARE(editor_->draft().line(path::high), high);
    QCOMPARE(editor_->draft().text(path::referenceSchedule), std::string("every 8 h"));
  }
}

void FormTest::aFilledLineIsNotPassedFromElsewhere() {
  go(path::low);
  type("10 to 20 mg/kg/dose");
  go(path::dose);
  go(path::low);
  enter();
  QCOMPARE(at()->objectName(), QStringLiteral("reference.high:text"));
}

void FormTest::enterPassesOverTicks() {
  form_->setUnfolded(true);
  go(path::height);
  QStringList passed;
  for (int i = 0; i < 100; ++i) {
    passed << at()->objectName();
    const QWidget* before = at();
    enter();
    if (at() == before) break;
  }
  QVERIFY(passed.size() > 30);
  QVERIFY(passed.filter(QStringLiteral(":flag")).isEmpty());
}

void FormTest::spaceTicksNothingOnTheWay() {
  go(path::schedule);
  type("every 6 h");
  enter();
  QTest::keyClick(at(), Qt::Key_Space);
  for (const QCheckBox* flag : form_->findChildren<QCheckBox*>()) QVERIFY(!flag->isChecked());
}

void FormTest::openingAPartGoesIntoItsFirstField() {
  for (FormGroup* group : form_->findChildren<FormGroup*>()) {
    if (group->group() != FieldGroup::infusion) continue;
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Space}) {
      group->setUnfolded(false);
      group->moreButton()->setFocus(Qt::TabFocusReason);
      QTest::keyClick(group->moreButton(), key);
      QCOMPARE(at()->objectName(), QStringLiteral("infusion.volume:text"));
    }
    return;
  }
  QFAIL("no group");
}

/// H45: a program that helps a person to type sets the text as a whole, with no key and no focus.
void FormTest::aTextSetFromOutsideIsReadAtOnce() {
  go(path::medicine);
  auto* weight = box<QLineEdit>("child.weight:text");
  QAccessibleInterface* one = QAccessible::queryAccessibleInterface(weight);
  one->editableTextInterface()->replaceText(0, one->textInterface()->characterCount(),
                                            QStringLiteral("17.2 kg"));
  QCOMPARE(editor_->draft().text(path::weight), std::string("17.2 kg"));
  QCOMPARE(editor_->draft().state(path::weight), FieldState::read);
  one->editableTextInterface()->replaceText(0, one->textInterface()->characterCount(),
                                            QStringLiteral("18 kg"));
  QCOMPARE(editor_->draft().text(path::weight), std::string("18 kg"));
}

void FormTest::aDroppedOrPastedTextIsPendingUntilItIsLeft() {
  go(path::weight);
  QGuiApplication::clipboard()->setText(QStringLiteral("17.2 kg"));
  QTest::keyClick(at(), Qt::Key_V, Qt::ControlModifier);
  QCOMPARE(editor_->draft().state(path::weight), FieldState::pending);
  go(path::height);
  QCOMPARE(editor_->draft().state(path::weight), FieldState::read);
  QMimeData text;
  text.setText(QStringLiteral("4 years"));
  QDropEvent drop(QPointF(4, 4), Qt::CopyAction, &text, Qt::LeftButton, Qt::NoModifier);
  static_cast<QObject*>(box<QLineEdit>("child.age:text"))->event(&drop);
  QVERIFY(editor_->draft().state(path::age) != FieldState::empty);
  QCOMPARE(form_->field(pathOf(path::age))->entry(),
           QString::fromStdString(editor_->draft().line(path::age)));
}

void FormTest::composingMakesAFieldPending() {
  go(path::weight);
  type("17.2 kg");
  enter();
  go(path::weight);
  QInputMethodEvent composing(QStringLiteral("3"), {});
  QApplication::sendEvent(at(), &composing);
  QCOMPARE(editor_->draft().state(path::weight), FieldState::pending);
  QInputMethodEvent ended(QString(), {});
  QApplication::sendEvent(at(), &ended);
  go(path::height);
  QVERIFY(editor_->draft().state(path::weight) != FieldState::pending);
}

void FormTest::theMenuOfALineOffersTheFormsHistory() {
  go(path::weight);
  type("17.2 kg");
  enter();
  go(path::weight);
  auto* line = box<QLineEdit>("child.weight:text");
  QContextMenuEvent asks(QContextMenuEvent::Keyboard, QPoint(2, 2), line->mapToGlobal(QPoint(2, 2)));
  QApplication::sendEvent(line, &asks);
  auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
  QVERIFY(menu);
  auto* undo = menu->findChild<QAction*>(QStringLiteral("line-undo"));
  QVERIFY(undo);
  undo->trigger();
  menu->close();
  QVERIFY(editor_->draft().isEmpty());
  QCOMPARE(line->text(), QString());
  editor_->clear();
  QApplication::sendEvent(line, &asks);
  menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
  menu->findChild<QAction*>(QStringLiteral("line-undo"))->trigger();
  menu->close();
  QVERIFY(line->text().isEmpty());
}

void FormTest::aBareHeightShowsItsUnitBeforeTyping() {
  const QImage before = box<QLineEdit>("child.height:text")->grab().toImage();
  editor_->offer({Unit::cm, std::nullopt});
  form_->showBareUnits();
  QVERIFY(box<QLineEdit>("child.height:text")->grab().toImage() != before);
  type("103");
  enter();
  QCOMPARE(box<QLineEdit>("child.height:text")->text(), QStringLiteral("103 cm"));
}

void FormTest::aRefusalMovesNoFieldBesideIt() {
  type("103 cm");
  enter();
  QHash<const FieldEdit*, QRect> before;
  for (const FieldEdit* field : form_->findChildren<FieldEdit*>())
    if (field->isVisible() && field->spec().group == FieldGroup::child) before[field] = field->geometry();
  type("17,2 kg");
  enter();
  QVERIFY(form_->field(pathOf(path::weight))->isRefused());
  QApplication::sendPostedEvents();
  for (auto it = before.cbegin(); it != before.cend(); ++it) {
    QCOMPARE(it.key()->geometry().left(), it.value().left());
    QCOMPARE(it.key()->geometry().width(), it.value().width());
    QCOMPARE(it.key()->geometry().top(), it.value().top());
  }
}

void FormTest::nothingMovesWhileTheMouseIsDown() {
  type("103 c");
  const FieldEdit* medicine = form_->field(pathOf(path::medicine));
  const QPoint place = medicine->mapTo(form_.get(), QPoint());
  auto* line = box<QLineEdit>("order.medicine:text");
  QTest::mousePress(form_->windowHandle(), Qt::LeftButton, {}, line->mapTo(form_.get(), QPoint(5, 5)));
  QCOMPARE(editor_->draft().state(path::height), FieldState::refused);
  QApplication::sendPostedEvents();
  QCOMPARE(medicine->mapTo(form_.get(), QPoint()), place);
  QTest::mouseRelease(form_->windowHandle(), Qt::LeftButton, {}, line->mapTo(form_.get(), QPoint(5, 5)));
  QTRY_VERIFY(form_->field(pathOf(path::height))->answer()->isVisible());
}

void FormTest::theEndsOfTheReferenceSayWhatTheyComeTo() {
  for (const auto& [path, typed] :
       {std::pair(path::height, "103 cm"), std::pair(path::weight, "17.2 kg"),
        std::pair(path::low, "80 mg/m2/dose"), std::pair(path::high, "120 mg/m2/dose")}) {
    go(path);
    type(typed);
    enter();
  }
  form_->follow(workOut(editor_->draft().toCase(), exactRules()));
  QCOMPARE(line(path::low), QStringLiteral("56 mg for this child"));
  QCOMPARE(line(path::high), QStringLiteral("84 mg for this child"));
}

void FormTest::leavingAFieldReadsIt() {
  type("103 cm");
  QCOMPARE(editor_->draft().state(path::height), FieldState::pending);
  go(path::medicine);
  QCOMPARE(editor_->draft().state(path::height), FieldState::read);
}

void FormTest::anotherWindowDoesNotEndTheTyping() {
  type("10");
  QFocusEvent away(QEvent::FocusOut, Qt::ActiveWindowFocusReason);
  QApplication::sendEvent(at(), &away);
  QCOMPARE(editor_->draft().state(path::height), FieldState::pending);
}

void FormTest::theLastFieldSaysPressEnter() {
  go(path::strength);
  type("25 mg/m");
  QCOMPARE(line(path::strength), QStringLiteral("press Enter"));
  type("L");
  enter();
  QCOMPARE(line(path::strength), QStringLiteral("25 mg per mL"));
}

void FormTest::refusedTextStaysWithItsReason() {
  go(path::weight);
  type(".5 kg");
  enter();
  QCOMPARE(box<QLineEdit>("child.weight:text")->text(), QStringLiteral(".5 kg"));
  QVERIFY2(line(path::weight).contains(QStringLiteral("0.5")), qPrintable(line(path::weight)));
  QVERIFY(!box<QLineEdit>("child.weight:text")->accessibleDescription().isEmpty());
}

void FormTest::aPastedUnseenCharacterStaysAndIsRefused_data() {
  QTest::addColumn<QString>("path");
  QTest::addColumn<QString>("pasted");
  QTest::addColumn<QString>("number");
  for (const char* path : {"order.medicine", "reference.source"}) {
    const QString field = QString::fromLatin1(path);
    const auto row = [&](const char* name, const QString& pasted, const char* number) {
      QTest::addRow("%s in %s", name, path) << field << pasted << QString::fromLatin1(number);
    };
    row("line feed", QStringLiteral("Plo\nver"), "U+000A");
    row("line feed last", QStringLiteral("Plover\n"), "U+000A");
    row("carriage return", QStringLiteral("Plo\r\nver"), "U+000D");
    row("tab", QStringLiteral("Plo\tver"), "U+0009");
    row("escape", QStringLiteral("Plo\u001B[2Jver"), "U+001B");
    row("line separator", QStringLiteral("Plo\u2028ver"), "U+2028");
    row("paragraph separator", QStringLiteral("Plo\u2029ver"), "U+2029");
    row("right-to-left override", QStringLiteral("Plover\u202E"), "U+202E");
    row("isolate", QStringLiteral("\u2067Plover"), "U+2067");
    row("zero-width space", QStringLiteral("Plo\u200Bver"), "U+200B");
    row("byte order mark", QStringLiteral("\uFEFFPlover"), "U+FEFF");
  }
}

void FormTest::aPastedUnseenCharacterStaysAndIsRefused() {
  QFETCH(QString, path);
  QFETCH(QString, pasted);
  QFETCH(QString, number);
  form_->focusField(path);
  QGuiApplication::clipboard()->setText(pasted);
  QTest::keyClick(at(), Qt::Key_V, Qt::ControlModifier);
  enter();
  QCOMPARE(editor_->draft().line(path.toStdString()), pasted.toStdString());
  QCOMPARE(form_->findChild<QLineEdit*>(path + QStringLiteral(":text"))->text(), pasted);
  const QString said = form_->field(path)->line();
  QVERIFY2(said.contains(number) && said.contains(QStringLiteral("Type it again")), qPrintable(said));
}

void FormTest::unsafeAbbreviationsAreAnswered_data() {
  QTest::addColumn<QString>("path");
  QTest::addColumn<QString>("typed");
  QTest::addColumn<QString>("safe");
  QTest::newRow("microgram sign") << "order.dose" << QStringLiteral("80 µg") << "mcg";
  QTest::newRow("U") << "order.dose"
                     << "5 U"
                     << "units";
  QTest::newRow("IU") << "order.dose"
                      << "5 IU"
                      << "units";
  QTest::newRow("cc") << "order.dose"
                      << "5 cc"
                      << "mL";
  QTest::newRow("per d") << "reference.high"
                         << "5 mg/kg/d"
                         << "/day";
  QTest::newRow("percent") << "stock.strength"
                           << "1 %"
                           << "10 mg/mL";
  QTest::newRow("ratio") << "stock.strength"
                         << "1:1000"
                         << "1 mg/mL";
}

void FormTest::unsafeAbbreviationsAreAnswered() {
  QFETCH(QString, path);
  QFETCH(QString, typed);
  QFETCH(QString, safe);
  form_->focusField(path);
  QTest::keyClicks(at(), typed);
  enter();
  QCOMPARE(form_->field(path)->findChild<QLineEdit*>(path + QLatin1String(":text"))->text(), typed);
  QVERIFY2(form_->field(path)->line().contains(safe), qPrintable(form_->field(path)->line()));
}

void FormTest::everyKeyReachesTheBox() {
  type("1,e-5½x /:");
  QCOMPARE(box<QLineEdit>("child.height:text")->text(), QString::fromUtf8("1,e-5½x /:"));
}

void FormTest::readBackOfADose() {
  go(path::dose);
  type("160 mg/kg/dose");
  enter();
  QCOMPARE(line(path::dose), QStringLiteral("160 mg per kg per dose"));
}

void FormTest::rarerFieldsUnfoldWithTheirGroup() {
  FieldEdit* charted = form_->field(pathOf(path::bsa));
  QVERIFY(!charted->isVisible());
  form_->setUnfolded(true);
  QVERIFY(charted->isVisible());
  form_->setUnfolded(false);
  QVERIFY(!charted->isVisible());
}

void FormTest::aFieldThatComesIntoViewLaterHasItsPlace() {
  QVERIFY(!form_->findChild<FieldEdit*>(pathOf(path::bsa)));
  form_->setUnfolded(true);
  form_->setUnfolded(false);
  form_->setUnfolded(true);
  QStringList made;
  for (const FormGroup* group : form_->findChildren<FormGroup*>())
    for (const FieldEdit* field : group->fields()) made << field->path();
  QStringList wanted;
  for (const FieldSpec& spec : fieldTable()) wanted << pathOf(spec.path);
  QCOMPARE(made, wanted);
}

void FormTest::aFoldedFieldThatHoldsSomethingIsInView() {
  editor_->open({{"reference.max_per_day", "2 g"}});
  QVERIFY(form_->field(pathOf(path::maxPerDay))->isVisible());
}

void FormTest::powderAsksForItsMixing() {
  QVERIFY(!form_->field(pathOf(path::diluent))->isVisible());
  go(path::stockKind);
  type("powder");
  enter();
  QVERIFY(form_->field(pathOf(path::diluent))->isVisible());
}

void FormTest::undoKeyGoesToTheFormsHistory() {
  type("103 cm");
  QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
  undo.ignore();
  QApplication::sendEvent(at(), &undo);
  QVERIFY(!undo.isAccepted());
}

void FormTest::nothingIsChosenBeforehand() {
  form_->setUnfolded(true);
  for (const QCheckBox* flag : form_->findChildren<QCheckBox*>()) QVERIFY(!flag->isChecked());
  for (const QLineEdit* text : form_->findChildren<QLineEdit*>())
    QVERIFY(text->text().isEmpty() && text->placeholderText().isEmpty());
}

WARDCHALK_QT_TEST(FormTest)

}  // namespace wardchalk::ui::form_test

#include "form_test.moc"
