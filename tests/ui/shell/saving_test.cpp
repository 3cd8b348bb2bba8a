#include <sys/stat.h>

#include <QAction>
#include <QFile>
#include <QTest>

#include "tests/ui/shell/nurse.h"
#include "tests/ui/shell/usual_case.h"
#include "tests/ui/support/qt_class.h"
#include "ui/form/form.h"

namespace wardchalk::ui::saving_test {

/// A file that somebody else touches while it is open here.
class SavingTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void init();
  void cleanup() { nurse_.reset(); }

  void anUntouchedFileIsSavedWithoutAQuestion();
  void aChangedFileIsToldWithWhatDiffers();
  void mineMayBeKept();
  void theirsMayBeOpened();
  void mineMayGoElsewhere();
  void aDeletedFileIsToldAndMayBeWrittenAgain();
  void aDamagedFileCannotBeOpenedButWrittenOver();
  void aChangedFileIsAskedAboutWhenTheWindowCloses();
  void whyItCannotBeWrittenIsSaidPlainly();
  void ofTwoWindowsTheSecondIsAsked_data();
  void ofTwoWindowsTheSecondIsAsked();
  void aNameThatIsTakenIsAskedAbout();
  void aNameThatCameToBeMeanwhileIsAskedAbout();
  void whatIsNoCaseIsToldBeforeItIsOverwritten();
  void itsOwnNameIsNotAskedAbout();
  void itsOwnNameIsAskedAboutWhenItHasChanged();
  void aChangeWhileTheQuestionStandsIsAskedAboutAgain();
  void aDeletedFileThatCameBackIsAskedAboutAgain();
  void whatIsNoFileIsNeitherOpenedNorWritten();

 private:
  QString file() const { return nurse_->folder() + QStringLiteral("/case.json"); }
  void save() { nurse_->press(Qt::Key_S, Qt::ControlModifier); }
  QByteArray content(const QString& name) {
    QFile in(name);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
  }
  void saveAs() { nurse_->window().findChild<QAction*>(QStringLiteral("save-as"))->trigger(); }
  void write(const QByteArray& text) { write(text, file()); }
  static void write(const QByteArray& text, const QString& name) {
    QFile out(name);
    QVERIFY(out.open(QIODevice::WriteOnly));
    out.write(text);
  }
  /// Somebody weighs the child again.
  void theyChangeTheWeight() { write(content(file()).replace("17.2 kg", "17.9 kg")); }
  void iChangeTheHeight() {
    nurse_->window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
    nurse_->fill({QStringLiteral("104 cm")});
  }
  std::string weight() { return nurse_->window().editor().draft().text("child.weight"); }

  std::unique_ptr<Nurse> nurse_;
};

void SavingTest::init() {
  nurse_ = std::make_unique<Nurse>();
  nurse_->fill(test::usualCase());
  nurse_->dialogs().save = file();
  save();
  QVERIFY(content(file()).contains("17.2 kg"));
}

void SavingTest::anUntouchedFileIsSavedWithoutAQuestion() {
  iChangeTheHeight();
  save();
  save();
  QVERIFY(nurse_->dialogs().overwrites.isEmpty());
  QVERIFY(content(file()).contains("104 cm"));
}

void SavingTest::aChangedFileIsToldWithWhatDiffers() {
  iChangeTheHeight();
  theyChangeTheWeight();
  const QByteArray theirs = content(file());
  save();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
  const QString& asked = nurse_->dialogs().overwrites[0];
  QVERIFY2(asked.contains(QStringLiteral("Weight: 17.2 kg here, 17.9 kg in the file")), qPrintable(asked));
  QVERIFY2(asked.contains(QStringLiteral("Height: 104 cm here, 103 cm in the file")), qPrintable(asked));
  QCOMPARE(content(file()), theirs);
  QVERIFY(nurse_->window().isWindowModified());
}

void SavingTest::mineMayBeKept() {
  theyChangeTheWeight();
  nurse_->dialogs().overwriting = Overwrite::keepMine;
  save();
  QVERIFY(content(file()).contains("17.2 kg"));
  save();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
}

void SavingTest::theirsMayBeOpened() {
  iChangeTheHeight();
  theyChangeTheWeight();
  nurse_->dialogs().overwriting = Overwrite::openTheirs;
  save();
  QCOMPARE(weight(), "17.9 kg");
  QCOMPARE(nurse_->dialogs().asked, 0);
  QVERIFY(!nurse_->window().isWindowModified());
}

void SavingTest::mineMayGoElsewhere() {
  theyChangeTheWeight();
  nurse_->dialogs().overwriting = Overwrite::saveElsewhere;
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/mine.json");
  save();
  QVERIFY(content(nurse_->dialogs().save).contains("17.2 kg"));
  QVERIFY(content(file()).contains("17.9 kg"));
  QVERIFY(nurse_->window().windowTitle().contains(QStringLiteral("mine.json")));
}

void SavingTest::aDeletedFileIsToldAndMayBeWrittenAgain() {
  QVERIFY(QFile::remove(file()));
  save();
  QVERIFY(nurse_->dialogs().overwrites[0].contains(QStringLiteral("not there any more")));
  QVERIFY(!QFile::exists(file()));
  nurse_->dialogs().overwriting = Overwrite::keepMine;
  save();
  QVERIFY(content(file()).contains("17.2 kg"));
}

void SavingTest::aDamagedFileCannotBeOpenedButWrittenOver() {
  write("half a fi");
  save();
  QVERIFY2(nurse_->dialogs().overwrites[0].contains(QStringLiteral("cannot be read")),
           qPrintable(nurse_->dialogs().overwrites[0]));
  QCOMPARE(weight(), "17.2 kg");
}

void SavingTest::aChangedFileIsAskedAboutWhenTheWindowCloses() {
  iChangeTheHeight();
  theyChangeTheWeight();
  nurse_->dialogs().answer = Unsaved::save;
  QVERIFY(!nurse_->window().close());
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
  QVERIFY(content(file()).contains("17.9 kg"));
}

void SavingTest::whyItCannotBeWrittenIsSaidPlainly() {
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/no such folder/case.json");
  nurse_->window().findChild<QAction*>(QStringLiteral("save-as"))->trigger();
  QVERIFY2(nurse_->dialogs().told.value(0).contains(QStringLiteral("folder")),
           qPrintable(nurse_->dialogs().told.value(0)));
  QVERIFY(nurse_->dialogs().told.value(0).contains(QStringLiteral("another place")));
}

void SavingTest::ofTwoWindowsTheSecondIsAsked_data() {
  QTest::addColumn<bool>("firstIsFirst");
  QTest::newRow("the first saves first") << true;
  QTest::newRow("the second saves first") << false;
}

void SavingTest::ofTwoWindowsTheSecondIsAsked() {
  QFETCH(bool, firstIsFirst);
  Nurse colleague;
  QVERIFY(colleague.window().openFile(file()));
  Nurse& early = firstIsFirst ? *nurse_ : colleague;
  Nurse& late = firstIsFirst ? colleague : *nurse_;
  const auto enterAndSave = [](Nurse& one, const QString& height) {
    one.window().activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(&one.window()));
    one.window().findChild<Form*>()->focusField(QStringLiteral("child.height"));
    one.fill({height});
    one.window().findChild<QAction*>(QStringLiteral("save"))->trigger();
  };
  enterAndSave(early, QStringLiteral("104 cm"));
  QVERIFY(early.dialogs().overwrites.isEmpty());
  const QByteArray saved = content(file());
  QVERIFY(saved.contains("104 cm"));
  enterAndSave(late, QStringLiteral("105 cm"));
  QCOMPARE(late.dialogs().overwrites.size(), 1);
  QVERIFY2(late.dialogs().overwrites[0].contains(QStringLiteral("Height: 105 cm here, 104 cm in the file")),
           qPrintable(late.dialogs().overwrites[0]));
  QCOMPARE(content(file()), saved);
}

void SavingTest::aNameThatIsTakenIsAskedAbout() {
  const QString other = nurse_->folder() + QStringLiteral("/other.json");
  write(content(file()).replace("17.2 kg", "3.1 kg"), other);
  const QByteArray theirs = content(other);
  nurse_->dialogs().save = other;
  saveAs();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
  QVERIFY2(nurse_->dialogs().overwrites[0].contains(QStringLiteral("other.json is there already")),
           qPrintable(nurse_->dialogs().overwrites[0]));
  QVERIFY(nurse_->dialogs().overwrites[0].contains(QStringLiteral("17.2 kg here, 3.1 kg in the file")));
  QCOMPARE(content(other), theirs);
  nurse_->dialogs().overwriting = Overwrite::keepMine;
  saveAs();
  QCOMPARE(content(other), content(file()));
}

void SavingTest::aNameThatCameToBeMeanwhileIsAskedAbout() {
  const QString fresh = nurse_->folder() + QStringLiteral("/new.json");
  nurse_->dialogs().save = fresh;
  nurse_->dialogs().whileChoosing = [&] { write("somebody else's", fresh); };
  saveAs();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
  QCOMPARE(content(fresh), QByteArray("somebody else's"));
}

void SavingTest::whatIsNoCaseIsToldBeforeItIsOverwritten() {
  const QString list = nurse_->folder() + QStringLiteral("/list.json");
  write("no case", list);
  nurse_->dialogs().save = list;
  saveAs();
  QVERIFY2(nurse_->dialogs().overwrites.value(0).contains(QStringLiteral("is no case that can be read")),
           qPrintable(nurse_->dialogs().overwrites.value(0)));
  QCOMPARE(content(list), QByteArray("no case"));
}

void SavingTest::itsOwnNameIsNotAskedAbout() {
  iChangeTheHeight();
  nurse_->dialogs().save = nurse_->folder() + QStringLiteral("/./case.json");
  saveAs();
  QVERIFY(nurse_->dialogs().overwrites.isEmpty());
  QVERIFY(content(file()).contains("104 cm"));
}

void SavingTest::itsOwnNameIsAskedAboutWhenItHasChanged() {
  theyChangeTheWeight();
  saveAs();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 1);
  QVERIFY(content(file()).contains("17.9 kg"));
}

void SavingTest::aChangeWhileTheQuestionStandsIsAskedAboutAgain() {
  theyChangeTheWeight();
  nurse_->dialogs().overwriting = Overwrite::keepMine;
  nurse_->dialogs().whileAsked = [this] {
    if (content(file()).contains("17.9 kg")) write(content(file()).replace("17.9 kg", "18.9 kg"));
  };
  save();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 2);
  QVERIFY(nurse_->dialogs().overwrites[1].contains(QStringLiteral("18.9 kg in the file")));
  QVERIFY(content(file()).contains("17.2 kg"));
}

void SavingTest::aDeletedFileThatCameBackIsAskedAboutAgain() {
  QVERIFY(QFile::remove(file()));
  nurse_->dialogs().overwriting = Overwrite::keepMine;
  nurse_->dialogs().whileAsked = [this] {
    if (QFile::exists(file())) return;
    write("back again");
    nurse_->dialogs().whileAsked = [this] { nurse_->dialogs().overwriting = Overwrite::stop; };
  };
  save();
  QCOMPARE(nurse_->dialogs().overwrites.size(), 2);
  QCOMPARE(content(file()), QByteArray("back again"));
}

/// The test would not end if anything waited for the other end of the pipe.
void SavingTest::whatIsNoFileIsNeitherOpenedNorWritten() {
  const QString pipe = nurse_->folder() + QStringLiteral("/pipe.json");
  QCOMPARE(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
  QVERIFY(!nurse_->window().openFile(pipe));
  QVERIFY2(nurse_->dialogs().told.value(0).contains(QStringLiteral("is a pipe, not a file")),
           qPrintable(nurse_->dialogs().told.value(0)));
  QVERIFY(!nurse_->window().openFile(nurse_->folder()));
  QVERIFY(nurse_->dialogs().told.value(1).contains(QStringLiteral("is a folder")));
  nurse_->dialogs().save = pipe;
  saveAs();
  QVERIFY2(nurse_->dialogs().told.value(2).contains(QStringLiteral("is not a file but a pipe")),
           qPrintable(nurse_->dialogs().told.value(2)));
  struct stat status {};
  QCOMPARE(::stat(QFile::encodeName(pipe).constData(), &status), 0);
  QVERIFY(S_ISFIFO(status.st_mode));
}

WARDCHALK_QT_TEST(SavingTest)

}  // namespace wardchalk::ui::saving_test

#include "saving_test.moc"
