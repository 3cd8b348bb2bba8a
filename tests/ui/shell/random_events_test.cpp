#include <QAbstractButton>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QBackingStore>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHelpEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QMutex>
#include <QPixmapCache>
#include <QPrinter>
#include <QRandomGenerator>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QToolTip>
#include <algorithm>
#include <array>
#include <functional>

#if defined(__GLIBC__)
#include <malloc.h>
#endif
#include <unistd.h>

#include "core/practice/sessions/set_file.h"
#include "core/record/case_entry.h"
#include "tests/ui/practice/pupil.h"
#include "tests/ui/shell/nurse.h"
#include "tests/ui/support/qt_class.h"
#include "ui/board/board.h"
#include "ui/form/field_edit.h"
#include "ui/shell/action_table.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/rules_desk.h"

namespace wardchalk::ui::random_events_test {

namespace {

// Qt keeps letters, lists and pictures once they were made, and chance makes the last of them sooner or
// later: the first 2,000 events are lived through, the others judged.
constexpr int usualEvents = 12'000;

#if defined(__SANITIZE_ADDRESS__)
constexpr bool isSanitized = true;
#elif defined(__has_feature)
constexpr bool isSanitized = __has_feature(address_sanitizer);
#else
constexpr bool isSanitized = false;
#endif

/// What the program says that it should not; noise of the display that is none is passed over by its exact
/// words.
QStringList& warnings() {
  static QStringList all;
  return all;
}

void collect(QtMsgType kind, const QMessageLogContext&, const QString& text) {
  static QMutex lock;
  const QMutexLocker hold(&lock);
  const std::array noise = {"This plugin does not support propagateSizeHints()",
                            "This plugin does not support raise()",
                            "This plugin does not support grabbing the keyboard"};
  const bool known =
      std::any_of(noise.begin(), noise.end(), [&](const char* one) { return text == QLatin1String(one); });
  if (kind == QtDebugMsg || kind == QtInfoMsg || known) {
    if (!known) fprintf(stderr, "%s\n", qPrintable(text));
    return;
  }
  warnings() << text;
  fprintf(stderr, "warning: %s\n", qPrintable(text));
}

}  // namespace

/// The answers of somebody who does not look, and files of every kind.
class Chance {
 public:
  explicit Chance(quint32 seed) : dice_(seed) {
    for (const char* name :
         {"cases/plover.json", "demo/class_set.csv", "demo/reference_list.json", "demo/reference_list.csv"}) {
      const QString from = QStringLiteral(WARDCHALK_SOURCE_DIR "/resources/") + QLatin1String(name);
      const QString copy = folder_.filePath(QFileInfo(from).fileName());  // what is opened may be saved over
      if (!QFile::copy(from, copy)) qFatal("no copy of %s", name);
      QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    }
  }

  [[nodiscard]] int below(int end) { return dice_.bounded(end); }
  [[nodiscard]] bool oneIn(int times) { return below(times) == 0; }
  template <typename List>
  [[nodiscard]] auto oneOf(const List& list) {
    return list[static_cast<decltype(list.size())>(below(static_cast<int>(list.size())))];
  }
  [[nodiscard]] QString fileToRead() {
    const QStringList files{QString(),
                            folder_.filePath(QStringLiteral("plover.json")),
                            folder_.filePath(QStringLiteral("class_set.csv")),
                            folder_.filePath(QStringLiteral("reference_list.json")),
                            folder_.filePath(QStringLiteral("reference_list.csv")),
                            folder_.filePath(QStringLiteral("saved.json")),
                            folder_.filePath(QStringLiteral("rules.json")),
                            folder_.filePath(QStringLiteral("set.json")),
                            folder_.path(),
                            folder_.filePath(QStringLiteral("not there"))};
    return oneOf(files);
  }
  [[nodiscard]] QString fileToWrite(const QString& name) {
    const QStringList files{QString(), folder_.filePath(name),
                            folder_.filePath(QStringLiteral("no folder/file"))};
    return oneOf(files);
  }
  [[nodiscard]] QString inFolder(const char* name) const { return folder_.filePath(QLatin1String(name)); }

 private:
  QRandomGenerator dice_;
  QTemporaryDir folder_;
};

class ChanceDialogs : public Dialogs {
 public:
  explicit ChanceDialogs(Chance& chance) : chance_(chance) {}
  [[nodiscard]] bool choosePrinter(QWidget*, QPrinter& printer) override {
    printer.setOutputFileName(chance_.inFolder("printed.pdf"));
    return chance_.oneIn(4);
  }
  [[nodiscard]] QStringList files(QWidget*, const FileQuestion& question) override {
    if (question.filter.contains(QStringLiteral("pdf")) && !chance_.oneIn(4)) return {};
    if (question.kind == FileQuestion::save || question.kind == FileQuestion::saveAskedLater)
      return {chance_.fileToWrite(nameFor(question.filter))};
    QStringList some{chance_.fileToRead()};
    if (question.kind == FileQuestion::openSeveral) some << chance_.fileToRead();
    some.removeAll(QString());
    return some;
  }
  [[nodiscard]] Unsaved unsaved(QWidget*, const QString&) override {
    return static_cast<Unsaved>(chance_.below(3));
  }
  [[nodiscard]] Overwrite overwrite(QWidget*, const QString&, bool theirs) override {
    const auto answer = static_cast<Overwrite>(chance_.below(4));
    return answer == Overwrite::openTheirs && !theirs ? Overwrite::stop : answer;
  }
  [[nodiscard]] bool goesOn(QWidget*, const GoOnQuestion&) override { return chance_.oneIn(2); }
  void tell(QWidget*, const QString&, const QString&) override {}

 private:
  /// Names of their own, so that what comes with the program is not written over.
  static QString nameFor(const QString& filter) {
    for (const auto& [of, name] :
         {std::pair("Case files", "saved.json"), std::pair("House rules", "rules.json"),
          std::pair("Practice sets", "set.json"), std::pair("PDF", "sheet.pdf")})
      if (filter.startsWith(QLatin1String(of))) return QLatin1String(name);
    return QStringLiteral("table.csv");
  }

  Chance& chance_;
};

namespace {

/// In KiB. A menu that was open keeps the picture of itself, as large as it last was: some hundred KiB for
/// each, and more with large letters.
qint64 picturesOfClosedMenus() {
  qint64 points = 0;
  for (const QWidget* one : QApplication::topLevelWidgets())
    if (const QBackingStore* picture = one->isVisible() ? nullptr : one->backingStore())
      points += qint64{picture->size().width()} * picture->size().height();
  return points * 4 / 1024;
}

/// In KiB, what was asked for and not given back, small pieces and large, but for closed menus.
qint64 heldNow() {
#if defined(__GLIBC__)
  const struct mallinfo2 info = mallinfo2();
  return static_cast<qint64>((info.uordblks + info.hblkhd) / 1024) - picturesOfClosedMenus();
#else
  return 0;
#endif
}

/// In KiB, after what is free was given back: the allocator keeps pieces for itself otherwise. Pages of
/// programs and files that are shared with others come in as they are first used, and are not counted.
qint64 residentNow() {
#if defined(__GLIBC__)
  malloc_trim(0);
#endif
  QFile file(QStringLiteral("/proc/self/statm"));
  if (!file.open(QIODevice::ReadOnly)) return 0;
  const QList<QByteArray> pages = file.readAll().split(' ');
  return (pages.value(1).toLongLong() - pages.value(2).toLongLong()) * sysconf(_SC_PAGESIZE) / 1024;
}

int fromEnvironment(const char* name, int usual) {
  bool whole = false;
  const int value = qEnvironmentVariableIntValue(name, &whole);
  return whole && value > 0 ? value : usual;
}

}  // namespace

/// Ten fingers without a head: keys and clicks by chance over every window. Each step is asked for before the
/// one at hand is done, so that it goes on also inside a dialog that waits.
class RandomEventsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void nothingCrashesWarnsOrGrows();

 private:
  void step();
  void act();
  void holdShownAgainstJudged();
  void setFromOutside();
  void openEverythingOnce();
  void beginPractice();
  void run();
  [[nodiscard]] qint64 grownBy() const;
  bool settle();
  void note(const QString& what);
  QWidget* target();
  void strike(QWidget* at);
  void click(QWidget* window);
  void writeWord();
  void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
  void awaySoLong();
  void becomeAnotherSize(QWidget* window);

  std::unique_ptr<Chance> chance_;
  std::unique_ptr<Settings> settings_;
  std::unique_ptr<ChanceDialogs> dialogs_;
  std::unique_ptr<MainWindow> window_;
  std::unique_ptr<PracticeWindow> practice_;
  QPointer<QWidget> last_;
  std::chrono::milliseconds now_{0};
  int done_ = 0;
  int wanted_ = 0;
  int depth_ = 0;
  int tries_ = 0;
  bool measuring_ = false;
  bool ended_ = false;
  static constexpr qint64 mostGrowth = 1024;  ///< KiB in a run
  std::vector<qint64> resident_;
  std::vector<qint64> held_;
  QStringList traces_;
  QHash<QString, std::string> heldLines_;
  QStringList disagreements_;  // of what a field shows with what is judged
};

void RandomEventsTest::note(const QString& what) {
  static const bool trace = qEnvironmentVariableIsSet("WARDCHALK_TRACE");
  const QString line = QStringLiteral("%1: %2").arg(done_).arg(what);
  if (trace) fprintf(stderr, "%s\n", qPrintable(line));
  traces_ << line;
  if (traces_.size() > 40) traces_.removeFirst();
}

/// The window that keys and clicks go to: what is in front of the others, else now this one, now that.
QWidget* RandomEventsTest::target() {
  if (QWidget* popup = QApplication::activePopupWidget()) return popup;
  if (QWidget* modal = QApplication::activeModalWidget()) return modal;
  if (last_ && last_->isVisible() && !chance_->oneIn(40)) return last_;
  QList<QWidget*> tops;
  for (QWidget* one : QApplication::topLevelWidgets())
    if (one->isVisible() && one->windowType() != Qt::ToolTip && one->windowType() != Qt::Popup) tops << one;
  if (tops.isEmpty()) return nullptr;
  last_ = chance_->oneOf(tops);
  last_->activateWindow();
  return last_;
}

void RandomEventsTest::key(Qt::Key key, Qt::KeyboardModifiers with) {
  QWidget* at = QApplication::activePopupWidget();
  if (!at) at = QApplication::focusWidget();
  if (!at) at = target();
  note(QStringLiteral("key %1 on %2 %3")
           .arg(QKeySequence(static_cast<int>(key) | static_cast<int>(with)).toString(),
                QLatin1String(at->metaObject()->className()), at->objectName()));
  QTest::keyClick(at, key, with);
}

void RandomEventsTest::strike(QWidget* at) {
  static const std::array plain = {Qt::Key_Tab,    Qt::Key_Backtab,  Qt::Key_Left,   Qt::Key_Right,
                                   Qt::Key_Up,     Qt::Key_Down,     Qt::Key_Home,   Qt::Key_End,
                                   Qt::Key_PageUp, Qt::Key_PageDown, Qt::Key_Enter,  Qt::Key_Return,
                                   Qt::Key_Enter,  Qt::Key_Return,   Qt::Key_Escape, Qt::Key_Backspace,
                                   Qt::Key_Delete, Qt::Key_Space,    Qt::Key_Menu,   Qt::Key_Insert};
  static const std::array clipboard = {Qt::Key_C, Qt::Key_X,      Qt::Key_V, Qt::Key_A, Qt::Key_Z,
                                       Qt::Key_Y, Qt::Key_Insert, Qt::Key_H, Qt::Key_B};
  switch (chance_->below(10)) {
    case 0:
      return key(static_cast<Qt::Key>(Qt::Key_F1 + chance_->below(12)),
                 chance_->oneIn(3) ? Qt::ShiftModifier : Qt::NoModifier);
    case 1:
      return key(chance_->oneOf(clipboard), Qt::ControlModifier);
    case 2: {
      const ActionSpec& spec =
          actionTable()[static_cast<std::size_t>(chance_->below(static_cast<int>(actionTable().size())))];
      const QStringList ways = QString::fromLatin1(spec.shortcut).split(u';');
      note(QStringLiteral("shortcut ") + QLatin1String(spec.shortcut));
      return QTest::keySequence(at, QKeySequence(chance_->oneOf(ways), QKeySequence::PortableText));
    }
    case 3:
      return key(static_cast<Qt::Key>(Qt::Key_A + chance_->below(26)), Qt::AltModifier);
    case 4:
    case 5:
    case 6:
      return key(chance_->oneOf(plain), chance_->oneIn(6) ? Qt::ShiftModifier : Qt::NoModifier);
    default:
      return key(static_cast<Qt::Key>(chance_->below(3) ? Qt::Key_0 + chance_->below(10)
                                                        : Qt::Key_A + chance_->below(26)));
  }
}

/// What makes sense in some field, so that there is something to check, to compare and to print.
const QStringList& sensibleWords() {
  static const QStringList words{QStringLiteral("103 cm"),
                                 QStringLiteral("17.2 kg"),
                                 QStringLiteral("4 year"),
                                 QStringLiteral("Plover"),
                                 QStringLiteral("80 mg/dose"),
                                 QStringLiteral("every 12 h"),
                                 QStringLiteral("120 mg/m2/dose"),
                                 QStringLiteral("oral"),
                                 QStringLiteral("25 mg in 1 mL"),
                                 QStringLiteral("liquid"),
                                 QStringLiteral("3 ft 5 in"),
                                 QStringLiteral("37 lb"),
                                 QStringLiteral("1,5"),
                                 QStringLiteral("<b>&"),
                                 QStringLiteral("-0.000000000001"),
                                 QStringLiteral("9999999999999")};
  return words;
}

void RandomEventsTest::writeWord() {
  const QStringList& words = sensibleWords();
  const QString word = chance_->oneOf(words);
  note(QStringLiteral("word ") + word);
  for (const QChar letter : word) {
    if (QApplication::activePopupWidget()) return;
    QWidget* at = QApplication::focusWidget();
    if (!at) return;
    QTest::keyClick(at, letter.toLatin1());
    ++done_;
  }
  if (chance_->oneIn(2)) key(Qt::Key_Return);
}

void RandomEventsTest::click(QWidget* window) {
  if (window->width() < 1 || window->height() < 1) return;
  const QPoint place(chance_->below(window->width()), chance_->below(window->height()));
  QWidget* at = window->childAt(place);
  if (!at) at = window;
  const QPoint within = at->mapFrom(window, place);
  note(QStringLiteral("click at %1,%2 on %3 %4")
           .arg(within.x())
           .arg(within.y())
           .arg(QLatin1String(at->metaObject()->className()), at->objectName()));
  switch (chance_->below(8)) {
    case 0:
      return QTest::mouseDClick(at, Qt::LeftButton, {}, within);
    case 1: {
      const QPointer<QWidget> held = at;
      QTest::mouseClick(at, Qt::RightButton, {}, within);
      if (!held) return;
      QContextMenuEvent menu(QContextMenuEvent::Mouse, within, held->mapToGlobal(within));
      QApplication::sendEvent(held, &menu);
      return;
    }
    case 2: {
      QHelpEvent tip(QEvent::ToolTip, within, at->mapToGlobal(within));
      QApplication::sendEvent(at, &tip);
      return;
    }
    case 3:
      return QTest::mouseClick(at, Qt::LeftButton,
                               chance_->oneIn(2) ? Qt::ShiftModifier : Qt::ControlModifier, within);
    default:
      return QTest::mouseClick(at, Qt::LeftButton, {}, within);
  }
}

void RandomEventsTest::awaySoLong() {
  note(QStringLiteral("away"));
  now_ += std::chrono::seconds(301);
  window_->findChild<IdleWatch*>()->look();
}

/// Over and under the width at which two cards become one column.
void RandomEventsTest::becomeAnotherSize(QWidget* window) {
  static const std::array sizes = {QSize(800, 600), QSize(899, 768), QSize(1024, 768), QSize(1366, 768),
                                   QSize(1920, 1080)};
  const QSize size = chance_->oneOf(sizes);
  note(QStringLiteral("size %1x%2").arg(size.width()).arg(size.height()));
  window->resize(size);
}

void RandomEventsTest::act() {
  if (auto* files = qobject_cast<QFileDialog*>(QApplication::activeModalWidget())) return files->reject();
  for (QWidget* window : {static_cast<QWidget*>(window_.get()), static_cast<QWidget*>(practice_.get())})
    if (!window->isVisible() && !QApplication::activeModalWidget()) window->show();
  QWidget* at = target();
  if (!at) return;
  if (at->isWindow() && QApplication::activeWindow() != at && at->windowType() != Qt::Popup)
    at->activateWindow();
  const int what = chance_->below(202);
  if (what == 0) return awaySoLong();
  if (what >= 200 && at->windowType() != Qt::Popup) return becomeAnotherSize(at->window());
  if (what < 12) return writeWord();
  if (what < 16) return setFromOutside();
  if (what < 60) return click(at);
  strike(at);
}

/// Everything that lets itself be closed is, and the form is empty; false while that takes another step.
bool RandomEventsTest::settle() {
  if (++tries_ > 2000)
    qFatal("it does not come to rest: %s",
           qPrintable(QLatin1String(target()->metaObject()->className()) + u' ' + target()->objectName()));
  if (QWidget* popup = QApplication::activePopupWidget()) return popup->close(), false;
  if (QWidget* modal = QApplication::activeModalWidget()) {
    const auto* box = qobject_cast<QMessageBox*>(modal);
    const QList<QAbstractButton*> answers = box ? box->buttons() : QList<QAbstractButton*>();
    if (box && !answers.isEmpty())
      chance_->oneOf(answers)->click();
    else if (auto* dialog = qobject_cast<QDialog*>(modal))
      dialog->reject();
    else
      modal->close();
    return false;
  }
  if (depth_ > 1) return false;
  for (QWidget* one : QApplication::topLevelWidgets())
    if (one->isVisible() && one != window_.get() && one != practice_.get()) {
      one->close();
      return false;
    }
  for (const char* name : {"second-check-leave", "new-child", "zoom-reset", "units-none"})
    if (auto* action = window_->findChild<QAction*>(QLatin1String(name))) action->trigger();
  window_->findChild<RulesDesk*>()->use(RulesKind::exact);
  if (!window_->editor().draft().isEmpty()) return false;  // chance answered that the entries are kept
  for (QWidget* one : QApplication::topLevelWidgets())
    if (one->testAttribute(Qt::WA_DeleteOnClose)) one->close();  // a list waits out of sight
  beginPractice();                                               // a session is kept as long as its window
  window_->resize(1366, 768);  // a larger one holds a larger picture of itself
  window_->show();
  for (int i = 0; i < 5; ++i) {  // painted, and what was closed is gone
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  QApplication::clipboard()->clear();
  QToolTip::hideText();
  QPixmapCache::clear();
  return true;
}

/// What a field shows is what is judged: it is pending, or what its line reads to is what the draft holds;
/// whatever way its text came.
void RandomEventsTest::holdShownAgainstJudged() {
  const CaseDraft& draft = window_->editor().draft();
  for (FieldEdit* field : window_->findChildren<FieldEdit*>()) {
    const std::string_view path = field->spec().path;
    const FieldState state = draft.state(path);
    const std::string shown = field->entry().toStdString();
    if (state == FieldState::pending) continue;
    if (shown != draft.line(path)) {
      disagreements_ << field->path() + QStringLiteral(" shows ") + field->entry() +
                            QStringLiteral(" and holds ") + QString::fromStdString(draft.line(path));
      continue;
    }
    if (state != FieldState::read || heldLines_.value(field->path()) == shown) continue;  // held before
    heldLines_[field->path()] = shown;
    CaseDraft again;
    again.offer(draft.offered());
    again.set(path, shown);
    again.commitAsItStands(path);
    Case one;
    Case other;
    if (!setEntry(one, path, again.text(path)) || !setEntry(other, path, draft.text(path)) || !(one == other))
      disagreements_ << field->path() + QStringLiteral(" shows ") + field->entry() +
                            QStringLiteral(" and is judged as ") + QString::fromStdString(draft.text(path));
  }
}

/// As a program that helps a person to write does it: the whole text at once, with no key and no focus.
void RandomEventsTest::setFromOutside() {
  const QList<FieldEdit*> fields = window_->findChildren<FieldEdit*>();
  if (fields.isEmpty() || QApplication::activeModalWidget() || QApplication::activePopupWidget()) return;
  auto* line = fields.at(chance_->below(static_cast<int>(fields.size())))->findChild<QLineEdit*>();
  QAccessibleInterface* one = line ? QAccessible::queryAccessibleInterface(line) : nullptr;
  if (!one || !one->editableTextInterface() || line->isReadOnly()) return;
  one->editableTextInterface()->replaceText(0, one->textInterface()->characterCount(),
                                            chance_->oneOf(sensibleWords()));
}

void RandomEventsTest::step() {
  if (ended_) return;
  QTimer::singleShot(0, this, &RandomEventsTest::step);
  ++depth_;
  if (measuring_) {
    if (settle()) {
      resident_.push_back(residentNow());
      held_.push_back(heldNow());
      measuring_ = false;
      tries_ = 0;
      ended_ = done_ >= wanted_;
    }
  } else {
    const int round = done_ / 2000;
    act();
    holdShownAgainstJudged();
    ++done_;
    measuring_ = done_ / 2000 != round || done_ >= wanted_;
  }
  --depth_;
}

/// What is made when a window opens for the first time and when letters are first drawn in a size (icons,
/// plugins, letters, their widths) counts as the program's, and is made before it is measured.
void RandomEventsTest::openEverythingOnce() {
  const auto trigger = [this](const char* name) {
    window_->findChild<QAction*>(QLatin1String(name))->trigger();
  };
  const auto settled = [] {
    for (int i = 0; i < 20; ++i) {
      QCoreApplication::processEvents();
      if (QWidget* modal = QApplication::activeModalWidget()) modal->close();
    }
  };
  for (const ActionSpec& spec : actionTable()) {
    if (spec.id == ActionId::practice || spec.id == ActionId::quit) continue;
    trigger(spec.name);
    settled();
  }
  for (QComboBox* box : window_->findChildren<QComboBox*>()) {  // each makes its list when it is first opened
    box->showPopup();
    settled();
    box->hidePopup();
  }
  while (window_->editor().draft().isEmpty()) trigger("example");
  trigger("board");
  settled();
  if (auto* board = window_->findChild<Board*>()) {
    for (int stage = 0; stage < 200; ++stage) QTest::keyClick(board, Qt::Key_Right);
    settled();
    board->close();
  }
  const auto drawInEverySize = [&] {
    for (int percent = leastTextSize; percent <= mostTextSize; percent += 10) {
      trigger("zoom-in");
      practice_->setZoom(percent);
      settled();
    }
  };
  // The longest page that there is: tables of Qt that grew for it stay as large.
  const auto seen = [this](const char* name) -> QWidget* {  // two pages have parts of the same names
    for (QWidget* one : practice_->findChildren<QWidget*>(QLatin1String(name)))
      if (one->isVisible() && one->isEnabled()) return one;
    qFatal("practice has no %s", name);
  };
  qobject_cast<QSpinBox*>(seen("count"))->setValue(mostProblems);
  for (const char* name : {"topic:amount-liquid", "mode:test", "begin", "review"}) {
    if (name == QByteArrayView("review")) drawInEverySize();
    qobject_cast<QAbstractButton*>(seen(name))->click();
    settled();
  }
  beginPractice();
  while (settings_->textSize() > leastTextSize) {
    trigger("zoom-out");
    settled();
  }
}

void RandomEventsTest::beginPractice() {
  practice_ = std::make_unique<PracticeWindow>(*dialogs_, PaperSize::a4, 41, 100);
  practice_->resize(1100, 740);
  practice_->show();
}

void RandomEventsTest::nothingCrashesWarnsOrGrows() {
#if defined(__GLIBC__)
  // One heap, and large blocks given back at once: else what lies scattered in it is measured, not what is
  // held.
  mallopt(M_ARENA_MAX, 1);
  mallopt(M_MMAP_THRESHOLD, 1 << 16);
#endif
  const auto seed = static_cast<quint32>(fromEnvironment("WARDCHALK_SEED", 20261129));
  wanted_ = fromEnvironment("WARDCHALK_EVENTS", usualEvents);
  qInstallMessageHandler(collect);
  QApplication::setQuitOnLastWindowClosed(false);
  chance_ = std::make_unique<Chance>(seed);
  settings_ = std::make_unique<Settings>(chance_->inFolder("settings.ini"));
  dialogs_ = std::make_unique<ChanceDialogs>(*chance_);
  window_ = std::make_unique<MainWindow>(exactRules(), *settings_, *dialogs_);
  window_->findChild<IdleWatch*>()->setClock([this] { return ClockReading{now_, now_}; });
  window_->resize(1366, 768);
  window_->show();
  beginPractice();
  openEverythingOnce();
  const int asked = wanted_;
  run();
  // What is not lost but kept for later (letters, tables) fills up and levels off; what is lost goes on. A
  // run that grew is therefore run once more as long, and judged by that.
  if (asked == usualEvents && !isSanitized && grownBy() > mostGrowth) {
    QCoreApplication::processEvents();  // a step that was still to come does nothing now
    wanted_ += usualEvents;
    ended_ = false;
    run();
  }
  practice_.reset();
  window_.reset();
  qInstallMessageHandler(nullptr);
  QStringList sizes;
  for (const qint64 size : resident_) sizes << QString::number(size);
  QStringList heldSizes;
  for (const qint64 size : held_) heldSizes << QString::number(size);
  qInfo("seed %u, %d events, KiB resident after each 2,000: %s; held: %s", seed, done_,
        qPrintable(sizes.join(u' ')), qPrintable(heldSizes.join(u' ')));
  QVERIFY2(warnings().isEmpty(), qPrintable(warnings().join(u'\n') + u'\n' + traces_.join(u'\n')));
  QVERIFY2(disagreements_.isEmpty(), qPrintable(disagreements_.mid(0, 5).join(u'\n')));
  // A longer run grows by some 2 MB: Qt keeps the letters that it has drawn. A sanitizer keeps what was given
  // back.
  if (isSanitized || asked != usualEvents) return;
  // Resident pages go up and down by some megabytes with how full they are, so what is judged is what is held
  // in them. That too goes up and down, by up to 0.7 MB: Qt lets its letters grow to 4 MB before it drops the
  // oldest. What is lost for good lifts the lowest of several marks.
  QCOMPARE(held_.size() % (usualEvents / 2000), std::size_t{0});
  QVERIFY2(grownBy() <= mostGrowth, qPrintable(heldSizes.join(u' ')));
}

void RandomEventsTest::run() {
  QTimer::singleShot(0, this, &RandomEventsTest::step);
  while (!ended_) QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

/// By how many KiB the lowest mark of the last half of a run is above the lowest of its first, but for the
/// first mark.
qint64 RandomEventsTest::grownBy() const {
  const auto half = held_.end() - 3;
  return *std::min_element(half, held_.end()) - *std::min_element(half - 2, half);
}

WARDCHALK_QT_TEST(RandomEventsTest)

}  // namespace wardchalk::ui::random_events_test

#include "random_events_test.moc"
