#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QPushButton>
#include <QTest>

#include "core/check/work_out.h"
#include "core/words/amount_words.h"
#include "tests/support/golden_cases.h"
#include "tests/support/settled.h"
#include "tests/ui/shell/everything_said.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/heard.h"
#include "tests/ui/support/qt_class.h"
#include "tests/ui/support/settling.h"
#include "ui/access/announcer.h"
#include "ui/form/form.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/theme/text.h"

namespace wardchalk::ui::case_voice_test {

using wardchalk::test::GoldenCase;
using wardchalk::test::goldenCases;
using wardchalk::test::goldenFolder;

/// What is heard at the window while the keyboard stays where it is: verdicts, refusals, the cover, a second
/// check.
class CaseVoiceTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init() {
    listener_ = std::make_unique<test::Listener>();
    nurse_ = std::make_unique<Nurse>();
    QVERIFY(nurse_->goBack());
  }
  void cleanup() {
    nurse_.reset();
    listener_.reset();
  }

  void theVerdictIsHeardOnceTheLineIsLeft();
  void aFormThatFillsUpIsQuiet();
  void howALineWasReadIsHeard_data();
  void howALineWasReadIsHeard();
  void aReadingIsHeardOnceAndForgotten();
  void theSameVerdictOfAnotherDoseIsHeardAgain();
  void aSourceHasNoVerdictSaidAgain();
  void nothingOldFollowsAnEdit();
  void aVerdictThatIsLostIsHeard();
  void aRefusalIsHeardWithWhatToWrite();
  void aQuestionIsHeardWithItsChoices();
  void oneRefusalIsHeardAlone();
  void theAmountIsHeardOnceItIsAsked();
  void noAmountIsHeardBefore_data();
  void noAmountIsHeardBefore();
  void theKeySaysEverything();
  void aSecondCheckIsHeard();
  void theCoverIsHeardAndLeavesNothing();
  void aNewChildLeavesNothing();

 private:
  void rewrite(const QString& path, const QString& text) {
    nurse_->window().findChild<Form*>()->focusField(path);
    nurse_->type(text);
    nurse_->enter();
  }
  void passMinutes();
  [[nodiscard]] const QStringList& heard() const { return listener_->heard(); }

  std::chrono::milliseconds now_{};
  std::unique_ptr<test::Listener> listener_;
  std::unique_ptr<Nurse> nurse_;
};

void CaseVoiceTest::passMinutes() {
  auto* watch = nurse_->window().findChild<IdleWatch*>();
  now_ = {};
  watch->setClock([this] { return ClockReading{now_, now_}; });
  now_ = std::chrono::seconds(301);
  watch->look();
}

void CaseVoiceTest::theVerdictIsHeardOnceTheLineIsLeft() {
  nurse_->fill(test::usualCase());
  QTRY_COMPARE(listener_->last(), QStringLiteral("SAFE by this reference. 80 mg ordered; safe up to 84 mg "
                                                 "per dose. Measure 3.2 mL (80 mg) for one dose."));
}

/// What is missing is read on the flag; line by line it would drown what is typed.
void CaseVoiceTest::aFormThatFillsUpIsQuiet() {
  nurse_->fill(test::usualCase().mid(0, 5));
  announce(nurse_->window(), QStringLiteral("after them"));
  QTRY_COMPARE(heard(), QStringList{QStringLiteral("after them")});
}

void CaseVoiceTest::howALineWasReadIsHeard_data() {
  QTest::addColumn<QString>("path");
  QTest::addColumn<QString>("typed");
  QTest::addColumn<QString>("heard");
  const auto row = [](const char* path, const char* typed, const char* heard) {
    QTest::newRow(typed) << QString::fromLatin1(path) << QString::fromUtf8(typed) << QString::fromUtf8(heard);
  };
  row("child.weight", "37 lb", "Weight: 37 lb (≈ 16.78 kg).");
  row("child.weight", "17.20 kg", "Weight: 17.2 kg.");
  row("order.schedule", "q12h", "How often: every 12 hours (2 doses in 24 h, one every 12 h).");
  row("order.schedule", "bd", "How often: 2 times a day (2 doses in 24 h).");
  row("order.route", "PO", "Route: oral.");
  row("child.age", "4 yrs", "Age: 4 years.");
  // as it was typed, or so that it sounds alike
  row("child.weight", "17.2 kg", "");
  row("child.weight", " 17.2  KG ", "");
  row("order.schedule", "every 12 h", "");
  row("order.medicine", "Plover", "");
  row("reference.high", "120 mg/m2/dose", "");
  row("stock.strength", "25 mg in 1 mL", "");
  // what cannot be read has a sentence of its own
  row("order.schedule", "QD", "NO VERDICT");
}

/// How it was understood stands below a line that was left, where only the eye comes by itself.
void CaseVoiceTest::howALineWasReadIsHeard() {
  QFETCH(QString, path);
  QFETCH(QString, typed);
  QFETCH(QString, heard);
  rewrite(path, typed);
  announce(nurse_->window(), QStringLiteral("after it"));
  if (heard.isEmpty()) {
    QTRY_COMPARE(this->heard(), QStringList{QStringLiteral("after it")});
    return;
  }
  listener_->clear();
  rewrite(path, QStringLiteral("1"));
  listener_->clear();
  rewrite(path, typed);
  QTRY_VERIFY2(listener_->last().startsWith(heard), qPrintable(listener_->last()));
}

/// Behind the verdict, and not with the next one.
void CaseVoiceTest::aReadingIsHeardOnceAndForgotten() {
  nurse_->fill(test::usualCase());
  rewrite(QStringLiteral("child.weight"), QStringLiteral("17200 g"));
  QTRY_VERIFY2(listener_->last().startsWith(QStringLiteral("SAFE by this reference.")) &&
                   listener_->last().contains(QStringLiteral("Weight: ")),
               qPrintable(listener_->last()));
  rewrite(QStringLiteral("order.dose"), QStringLiteral("79 mg"));
  QTRY_VERIFY(listener_->last().contains(QStringLiteral("79 mg ordered")));
  QVERIFY(!listener_->last().contains(QStringLiteral("Weight: ")));
}

void CaseVoiceTest::theSameVerdictOfAnotherDoseIsHeardAgain() {
  nurse_->fill(test::usualCase());
  QTRY_VERIFY(listener_->last().contains(QStringLiteral("80 mg")));
  for (const char* dose : {"800 mg", "900 mg", "8000 mg"}) {
    rewrite(QStringLiteral("order.dose"), QString::fromLatin1(dose));
    const QString said = fromCore(dose == std::string_view("8000 mg") ? "8,000 mg" : dose);
    QTRY_VERIFY2(listener_->last().startsWith(QStringLiteral("UNSAFE by this reference.")) &&
                     listener_->last().contains(said),
                 qPrintable(listener_->last()));
  }
}

void CaseVoiceTest::aSourceHasNoVerdictSaidAgain() {
  nurse_->fill(test::usualCase());
  QTRY_COMPARE(heard().size(), 1);
  rewrite(QStringLiteral("reference.source"), QStringLiteral("Bench list, p. 5"));
  announce(nurse_->window(), QStringLiteral("after it"));
  QTRY_COMPARE(listener_->last(), QStringLiteral("after it"));
  QCOMPARE(heard().size(), 2);
  rewrite(QStringLiteral("child.height"), QStringLiteral("1.03 m"));  // the same words, and yet judged anew
  QTRY_COMPARE(heard().size(), 3);
  QVERIFY(listener_->last().startsWith(QStringLiteral("SAFE by this reference.")));
}

void CaseVoiceTest::nothingOldFollowsAnEdit() {
  nurse_->fill(test::usualCase());
  QTRY_VERIFY(!test::stillThere().isEmpty());
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("order.dose"));
  nurse_->type(QStringLiteral("8"));
  QCOMPARE(test::stillThere(), QStringList());
  QCOMPARE(Announcer::of(nurse_->window()).last(), QString());
  listener_->clear();
  nurse_->type(QStringLiteral("2 mg"));
  nurse_->enter();  // and at once another, before the first is said
  rewrite(QStringLiteral("order.dose"), QStringLiteral("83 mg"));
  QTRY_COMPARE(heard().size(), 1);
  QVERIFY2(listener_->last().contains(QStringLiteral("83 mg ordered")), qPrintable(listener_->last()));
}

void CaseVoiceTest::aVerdictThatIsLostIsHeard() {
  nurse_->fill(test::usualCase());
  QTRY_VERIFY(listener_->last().startsWith(QStringLiteral("SAFE")));
  nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.weight"));
  nurse_->press(Qt::Key_Delete);
  nurse_->enter();
  QTRY_VERIFY2(listener_->last().startsWith(QStringLiteral("NO VERDICT: ")), qPrintable(listener_->last()));
}

void CaseVoiceTest::aRefusalIsHeardWithWhatToWrite() {
  nurse_->fill(test::usualCase());
  rewrite(QStringLiteral("order.dose"), QStringLiteral(".5 mg"));
  QTRY_VERIFY2(
      listener_->last().startsWith(QStringLiteral("NO VERDICT: “dose ordered” cannot be read yet. ")),
      qPrintable(listener_->last()));
  QVERIFY2(listener_->last().endsWith(QStringLiteral("F5 goes there; Alt+Enter then writes 0.5 mg.")),
           qPrintable(listener_->last()));
  nurse_->press(Qt::Key_F5);
  nurse_->press(Qt::Key_Return, Qt::AltModifier);
  QTRY_VERIFY2(listener_->last().contains(QStringLiteral("0.5 mg")) &&
                   !listener_->last().startsWith(QStringLiteral("NO VERDICT")),
               qPrintable(listener_->last()));
}

void CaseVoiceTest::aQuestionIsHeardWithItsChoices() {
  nurse_->fill({QString(), QStringLiteral("17.2")});
  QTRY_VERIFY2(listener_->last().endsWith(QStringLiteral("F5 goes there; write 17.2 kg or 17.2 lb.")),
               qPrintable(listener_->last()));
}

/// A line that is refused stays so while others are filled in, and is not told with each of them.
void CaseVoiceTest::oneRefusalIsHeardAlone() {
  nurse_->fill({QStringLiteral("1,03 m")});
  QTRY_COMPARE(heard().size(), 1);
  QVERIFY(listener_->last().contains(QStringLiteral("height")));
  nurse_->fill({QStringLiteral("17,2 kg")});
  QTRY_COMPARE(heard().size(), 2);
  QVERIFY2(listener_->last().contains(QStringLiteral("weight")), qPrintable(listener_->last()));
  nurse_->fill({QString(), QStringLiteral("Plover")});
  announce(nurse_->window(), QStringLiteral("after them"));
  QTRY_COMPARE(heard().size(), 3);
  QCOMPARE(listener_->last(), QStringLiteral("after them"));
}

void CaseVoiceTest::theAmountIsHeardOnceItIsAsked() {
  nurse_->fill(test::usualCase());
  rewrite(QStringLiteral("order.dose"), QStringLiteral("55 mg"));
  QTRY_VERIFY(listener_->last().startsWith(QStringLiteral("ASK BEFORE GIVING")));
  QVERIFY2(!listener_->last().contains(QStringLiteral("Measure")), qPrintable(listener_->last()));
  test::settleAll(nurse_->window());
  QVERIFY(nurse_->goBack());  // an open list had the keys
  QTRY_VERIFY2(listener_->last().contains(QStringLiteral("Measure 2.2 mL (55 mg) for one dose.")),
               qPrintable(listener_->last()));
  rewrite(QStringLiteral("order.dose"), QStringLiteral("54 mg"));
  QTRY_VERIFY(listener_->last().contains(QStringLiteral("54 mg")));
  QVERIFY(!listener_->last().contains(QStringLiteral("Measure")));
}

void CaseVoiceTest::noAmountIsHeardBefore_data() {
  QTest::addColumn<QString>("name");
  QTest::addColumn<QString>("tale");
  int cases = 0;
  for (const GoldenCase& golden : goldenCases()) {
    const Worksheet sheet = workOut(golden.given, golden.rules);
    const std::string measure = amountWords(wardchalk::test::settled(sheet)).measure;
    if (golden.rules != exactRules() || !Shown(sheet).waits() || measure.empty()) continue;
    QTest::newRow(golden.name.c_str()) << QString::fromStdString(golden.name) << fromCore(measure);
    ++cases;
  }
  QVERIFY(cases > 5);
}

void CaseVoiceTest::noAmountIsHeardBefore() {
  QFETCH(QString, name);
  QFETCH(QString, tale);
  QVERIFY(nurse_->window().openFile(QString::fromStdString(goldenFolder().string()) + u'/' + name +
                                    QStringLiteral(".case.json")));
  QTRY_VERIFY(listener_->last().startsWith(QStringLiteral("ASK BEFORE GIVING")));
  nurse_->press(Qt::Key_F3);
  QTRY_COMPARE(heard().size(), 2);
  for (const QString& said : heard()) QVERIFY2(!said.contains(tale), qPrintable(said));
}

void CaseVoiceTest::theKeySaysEverything() {
  nurse_->press(Qt::Key_F3);  // of an empty form nothing
  nurse_->fill(test::usualCase());
  QTRY_COMPARE(heard().size(), 1);
  for (const int times : {2, 3}) {
    nurse_->press(Qt::Key_F3);
    QTRY_COMPARE(heard().size(), times);
    for (const char* part : {"SAFE by this reference. 80 mg ordered", "NOT checked: ", "Measure 3.2 mL",
                             "Label must read: Plover 25 mg in 1 mL."})
      QVERIFY2(listener_->last().contains(QString::fromLatin1(part)), qPrintable(listener_->last()));
  }
  rewrite(QStringLiteral("order.dose"), QStringLiteral("80,5 mg"));
  QTRY_COMPARE(heard().size(), 4);
  nurse_->press(Qt::Key_F3);
  QTRY_COMPARE(heard().size(), 5);
  QVERIFY(listener_->last().startsWith(QStringLiteral("NO VERDICT: “dose ordered” cannot be read yet. ")));
}

void CaseVoiceTest::aSecondCheckIsHeard() {
  nurse_->fill(test::usualCase());
  nurse_->press(Qt::Key_F9);
  QTRY_VERIFY2(listener_->last().startsWith(QStringLiteral("Second check: ")), qPrintable(listener_->last()));
  QCOMPARE(test::firstFound(test::everythingSaid(), test::tellTale()), QString());
  QStringList again = test::usualCase();
  again[test::weightPlace] = QStringLiteral("12.7 kg");
  nurse_->fill(again);
  nurse_->press(Qt::Key_F9, Qt::ControlModifier);
  QTRY_VERIFY2(listener_->last().startsWith(QStringLiteral("The two differ.")),
               qPrintable(listener_->last()));
  nurse_->press(Qt::Key_F3);
  QVERIFY(listener_->last().startsWith(QStringLiteral("The two differ.")));
  nurse_->window().findChild<QCheckBox*>(QStringLiteral("second-alone"))->click();
  nurse_->window().findChild<QPushButton*>(QStringLiteral("second-finish"))->click();
  QTRY_VERIFY2(listener_->last().contains(QStringLiteral("DIFFERS")), qPrintable(listener_->last()));
  QVERIFY2(!listener_->last().contains(QStringLiteral("Measure")), qPrintable(listener_->last()));
}

void CaseVoiceTest::theCoverIsHeardAndLeavesNothing() {
  nurse_->fill(test::usualCase());
  QTRY_VERIFY(listener_->last().startsWith(QStringLiteral("SAFE")));
  passMinutes();
  QCOMPARE(test::firstFound(test::everythingSaid(), test::tellTale()), QString());
  QTRY_VERIFY2(listener_->last().startsWith(QStringLiteral("Still the same child?")),
               qPrintable(listener_->last()));
  nurse_->press(Qt::Key_F3);
  QTRY_VERIFY(listener_->last().startsWith(QStringLiteral("Still the same child?")));
  QCOMPARE(test::firstFound(test::everythingSaid(), test::tellTale()), QString());
  nurse_->window().findChild<QPushButton*>(QStringLiteral("cover-show"))->click();
  QTRY_VERIFY2(listener_->last().contains(QStringLiteral("Check this against the papers")),
               qPrintable(listener_->last()));
  nurse_->window().findChild<QPushButton*>(QStringLiteral("cover-go-on"))->click();
  QTRY_VERIFY2(listener_->last().startsWith(QStringLiteral("SAFE")), qPrintable(listener_->last()));
}

void CaseVoiceTest::aNewChildLeavesNothing() {
  nurse_->fill(test::usualCase());
  QTRY_VERIFY(listener_->last().startsWith(QStringLiteral("SAFE")));
  nurse_->dialogs().answer = Unsaved::discard;
  nurse_->press(Qt::Key_N, Qt::ControlModifier);
  QCOMPARE(test::firstFound(test::everythingSaid(), test::tellTale()), QString());
  nurse_->press(Qt::Key_F3);
  announce(nurse_->window(), QStringLiteral("after it"));
  QTRY_COMPARE(listener_->last(), QStringLiteral("after it"));
  QVERIFY(heard()[heard().size() - 2].startsWith(QStringLiteral("SAFE")));
}

WARDCHALK_QT_TEST(CaseVoiceTest)

}  // namespace wardchalk::ui::case_voice_test

#include "case_voice_test.moc"
