#include "ui/form/case_editor.h"

#include <QSignalSpy>
#include <QTest>

#include "core/medicine/paths.h"
#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::case_editor_test {

namespace {

const QString weight = QStringLiteral("child.weight");
const QString height = QStringLiteral("child.height");

QString kilograms(const char* text) { return QString::fromLatin1(text) + QStringLiteral(" kg"); }

}  // namespace

class CaseEditorTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void mergesTheTypingInOneField();
  void beginsANewStepOnceTheFieldWasRead();
  void doesNotMergeTwoFields();
  void undoReadsTheFieldAtOnce();
  void typingBackLeavesNothingToUndo();
  void whatIsWrittenInTheSafeFormIsAStep();
  void whatAnEntryFillsBesidesIsOneStep();
  void finishingAnUntouchedFieldChangesNothing();
  void clearCannotBeUndone();
  void openingIsNoChange();
};

void CaseEditorTest::mergesTheTypingInOneField() {
  CaseEditor editor;
  for (const char* text : {"1", "17", "17.", "17.2"}) editor.edit(weight, kilograms(text));
  QCOMPARE(editor.undoStack().count(), 1);
  editor.undoStack().undo();
  QVERIFY(editor.draft().isEmpty());
  editor.undoStack().redo();
  QCOMPARE(editor.draft().line(path::weight), std::string("17.2 kg"));
  QCOMPARE(editor.draft().state(path::weight), FieldState::read);
}

void CaseEditorTest::beginsANewStepOnceTheFieldWasRead() {
  CaseEditor editor;
  editor.edit(weight, kilograms("17"));
  editor.finish(weight);
  editor.edit(weight, kilograms("18"));
  QCOMPARE(editor.undoStack().count(), 2);
}

void CaseEditorTest::doesNotMergeTwoFields() {
  CaseEditor editor;
  editor.edit(weight, kilograms("17"));
  editor.edit(height, QStringLiteral("103 cm"));
  QCOMPARE(editor.undoStack().count(), 2);
}

void CaseEditorTest::undoReadsTheFieldAtOnce() {
  CaseEditor editor;
  editor.edit(weight, kilograms("17"));
  editor.finish(weight);
  editor.edit(weight, kilograms("18"));
  const QSignalSpy takenBack(&editor, &CaseEditor::takenBack);
  editor.undoStack().undo();
  QCOMPARE(editor.draft().state(path::weight), FieldState::read);
  QCOMPARE(editor.draft().line(path::weight), std::string("17 kg"));
  QCOMPARE(takenBack.count(), 1);
}

void CaseEditorTest::typingBackLeavesNothingToUndo() {
  CaseEditor editor;
  editor.edit(weight, kilograms("1"));
  editor.edit(weight, QString());
  QVERIFY(!editor.undoStack().canUndo());
}

void CaseEditorTest::whatIsWrittenInTheSafeFormIsAStep() {
  CaseEditor editor;
  editor.edit(weight, QStringLiteral("17.2KG"));
  editor.finish(weight);
  QCOMPARE(editor.draft().line(path::weight), std::string("17.2 kg"));
  editor.undoStack().undo();
  QCOMPARE(editor.draft().line(path::weight), std::string("17.2KG"));
  QCOMPARE(editor.draft().state(path::weight), FieldState::read);
  editor.undoStack().undo();
  QVERIFY(editor.draft().isEmpty());
  editor.undoStack().redo();
  editor.undoStack().redo();
  QCOMPARE(editor.draft().line(path::weight), std::string("17.2 kg"));
}

void CaseEditorTest::whatAnEntryFillsBesidesIsOneStep() {
  CaseEditor editor;
  const QString high = QStringLiteral("reference.high");
  editor.edit(high, QStringLiteral("10-15 mg/kg/dose"));
  editor.finish(high);
  QCOMPARE(editor.draft().line(path::low), std::string("10 mg/kg/dose"));
  editor.undoStack().undo();
  QCOMPARE(editor.draft().line(path::low), std::string());
  QCOMPARE(editor.draft().line(path::high), std::string("10-15 mg/kg/dose"));
  // of a range whose low end is gone neither end is judged before it is read again
  QVERIFY(editor.draft().state(path::high) == FieldState::pending);
  QVERIFY(!editor.draft().toCase().reference.high);
  editor.finish(high);
  QCOMPARE(editor.draft().line(path::low), std::string("10 mg/kg/dose"));
  editor.undoStack().undo();
  editor.undoStack().undo();
  QVERIFY(editor.draft().isEmpty());
  editor.undoStack().redo();
  editor.undoStack().redo();
  QCOMPARE(editor.draft().line(path::low), std::string("10 mg/kg/dose"));
  QVERIFY(editor.draft().state(path::high) == FieldState::read);
}

void CaseEditorTest::finishingAnUntouchedFieldChangesNothing() {
  CaseEditor editor;
  const QSignalSpy changed(&editor, &CaseEditor::changed);
  editor.finish(weight);
  QCOMPARE(changed.count(), 0);
}

void CaseEditorTest::clearCannotBeUndone() {
  CaseEditor editor;
  editor.edit(weight, kilograms("17"));
  editor.clear();
  QVERIFY(editor.draft().isEmpty());
  QVERIFY(!editor.undoStack().canUndo());
  QVERIFY(!editor.isModified());
}

void CaseEditorTest::openingIsNoChange() {
  CaseEditor editor;
  editor.open({{"child.weight", "17.2 kg"}});
  QVERIFY(!editor.isModified());
  editor.edit(weight, kilograms("18"));
  QVERIFY(editor.isModified());
  editor.markSaved();
  QVERIFY(!editor.isModified());
}

WARDCHALK_QT_CORE_TEST(CaseEditorTest)

}  // namespace wardchalk::ui::case_editor_test

#include "case_editor_test.moc"
