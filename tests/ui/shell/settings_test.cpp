#include "ui/shell/settings.h"

#include <QTemporaryDir>
#include <QTest>

#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::settings_test {

class SettingsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void startsWithNothingOffered();
  void keepsWhatWasSet();
  void whatCannotBeReadWasNeverChosen_data();
  void whatCannotBeReadWasNeverChosen();
  void aDamagedFileCanBeWrittenAgain();
  void aDamagedTextSizeIsKeptWithinItsEnds_data();
  void aDamagedTextSizeIsKeptWithinItsEnds();

 private:
  QString file() const { return folder_.filePath(QStringLiteral("settings.ini")); }
  QTemporaryDir folder_;
};

void SettingsTest::startsWithNothingOffered() {
  const Settings settings(folder_.filePath(QStringLiteral("new.ini")));
  QCOMPARE(settings.textSize(), 100);
  QVERIFY(settings.geometry().isEmpty());
  QVERIFY(settings.rules().isEmpty());
}

void SettingsTest::keepsWhatWasSet() {
  {
    Settings settings(file());
    settings.setTextSize(150);
    settings.setGeometry("place");
    settings.setRules(QStringLiteral("/ward/rules.json"));
    settings.setColours(Colours::contrastDark);
    settings.setCoverMinutes(3);
    settings.setPaper(PaperSize::letter);
  }
  const Settings settings(file());
  QCOMPARE(settings.textSize(), 150);
  QCOMPARE(settings.geometry(), QByteArray("place"));
  QCOMPARE(settings.rules(), QStringLiteral("/ward/rules.json"));
  QCOMPARE(settings.colours(), Colours::contrastDark);
  QCOMPARE(settings.coverMinutes(), std::optional(3));
  QCOMPARE(settings.paper(), PaperSize::letter);
}

void SettingsTest::whatCannotBeReadWasNeverChosen_data() {
  QTest::addColumn<QByteArray>("text");
  const auto row = [](const char* name, const QByteArray& text) { QTest::newRow(name) << text; };
  row("empty", {});
  row("of an older version", "[General]\nwindow=1\nlanguage=nl\n");
  row("words that no version knew", "[General]\ncolours=purple\ncover_minutes=soon\npaper=a3\nzoom=large\n");
  row("numbers out of all bounds", "[General]\ncolours=7\ncover_minutes=0\npaper=-1\n");
  row("more minutes than a rule may have", "[General]\ncover_minutes=121\n");
  row("minutes with a fraction", "[General]\ncover_minutes=2.5\n");
  row("a list in the place of a word", "[General]\ncolours=dark, light\ncover_minutes=1, 2\n");
  row("a kind that is none", "[General]\ncolours=@Variant(\\0\\0\\0)\ncover_minutes=@Size(1 2)\n");
  row("no such file at all", QByteArray("\0\1\2\xff\xfe[[[=\n]]\0", 12));
  row("cut in the middle", "[General]\ncolours=da");
}

void SettingsTest::whatCannotBeReadWasNeverChosen() {
  QFETCH(QByteArray, text);
  QFile written(file());
  QVERIFY(written.open(QIODevice::WriteOnly));
  written.write(text);
  written.close();
  const Settings settings(file());
  QCOMPARE(settings.colours(), Colours::desktop);
  QCOMPARE(settings.coverMinutes(), std::optional<int>());
  QCOMPARE(settings.paper(), PaperSize::a4);
  QCOMPARE(settings.textSize(), 100);
}

void SettingsTest::aDamagedFileCanBeWrittenAgain() {
  QFile written(file());
  QVERIFY(written.open(QIODevice::WriteOnly));
  written.write(QByteArray("\0\1\2\xff\xfe[[[=\n]]\0", 12));
  written.close();
  Settings(file()).setColours(Colours::dark);
  QCOMPARE(Settings(file()).colours(), Colours::dark);
  Settings(file()).setCoverMinutes(7);
  Settings(file()).setCoverMinutes(std::nullopt);
  QCOMPARE(Settings(file()).coverMinutes(), std::optional<int>());
}

void SettingsTest::aDamagedTextSizeIsKeptWithinItsEnds_data() {
  QTest::addColumn<QString>("kept");
  QTest::addColumn<int>("zoom");
  QTest::newRow("words") << "large" << 100;
  QTest::newRow("too small") << "5" << leastTextSize;
  QTest::newRow("too large") << "9000" << mostTextSize;
}

void SettingsTest::aDamagedTextSizeIsKeptWithinItsEnds() {
  QFETCH(QString, kept);
  QFETCH(int, zoom);
  {
    QSettings store(file(), QSettings::IniFormat);
    store.setValue(QStringLiteral("zoom"), kept);
  }
  QCOMPARE(Settings(file()).textSize(), zoom);
}

WARDCHALK_QT_CORE_TEST(SettingsTest)

}  // namespace wardchalk::ui::settings_test

#include "settings_test.moc"
