#include "core/record/text_file.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <fstream>

namespace wardchalk {
namespace {

namespace fs = std::filesystem;

/// A folder that is gone at the end.
class TextFile : public ::testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "wardchalk-XXXXXX").string();
    ASSERT_NE(mkdtemp(name.data()), nullptr);
    folder_ = name;
  }
  void TearDown() override {
    fs::permissions(folder_, fs::perms::owner_all);
    fs::remove_all(folder_);
  }
  [[nodiscard]] fs::path file() const { return folder_ / "case.json"; }
  [[nodiscard]] std::vector<std::string> names() const {
    std::vector<std::string> all;
    for (const auto& one : fs::directory_iterator(folder_)) all.push_back(one.path().filename().string());
    return all;
  }

  fs::path folder_;
};

std::string contentOf(const fs::path& path) {
  const Result<std::string> text = readTextFile(path);
  return text ? *text : std::string("unreadable");
}

TEST_F(TextFile, isWrittenWholeAndLeavesNothingBeside) {
  EXPECT_FALSE(writeTextFile(file(), "first"));
  EXPECT_FALSE(writeTextFile(file(), "second"));
  EXPECT_EQ(contentOf(file()), "second");
  EXPECT_EQ(names(), std::vector<std::string>{"case.json"});
}

/// Saves one text after the other until it is killed.
[[noreturn]] void saveOnAndOn(const fs::path& path, const std::string& one, const std::string& other,
                              int ready) {
  for (int i = 0;; ++i) {
    if (writeTextFile(path, i % 2 == 0 ? one : other)) _exit(1);
    if (i == 0 && write(ready, "x", 1) != 1) _exit(1);
  }
}

TEST_F(TextFile, isOldOrNewAndWholeHoweverOftenASaveIsKilled) {
  const std::string one(300'000, 'a');
  const std::string other(290'000, 'b');
  for (int round = 0; round < 200; ++round) {
    int pipe[2];
    ASSERT_EQ(::pipe(pipe), 0);
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) saveOnAndOn(file(), one, other, pipe[1]);
    char begun = 0;
    ASSERT_EQ(read(pipe[0], &begun, 1), 1);
    usleep(static_cast<useconds_t>(round * 37 % 2000));  // anywhere within a save, each time elsewhere
    ASSERT_EQ(kill(child, SIGKILL), 0);
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status));
    const std::string now = contentOf(file());
    ASSERT_TRUE(now == one || now == other) << round << ": " << now.size();
    close(pipe[0]);
    close(pipe[1]);
  }
  EXPECT_FALSE(writeTextFile(file(), "last"));  // what a killed save left beside it is in nobody's way
  EXPECT_EQ(names(), std::vector<std::string>{"case.json"});
}

/// The save in a process of its own, in which no file may grow beyond `most` bytes: a full disk. Its refusal,
/// or -1.
int refusalWithRoomFor(rlim_t most, const fs::path& path, const std::string& text) {
  const pid_t child = fork();
  if (child == 0) {
    const rlimit limit{most, most};
    setrlimit(RLIMIT_FSIZE, &limit);
    std::signal(SIGXFSZ, SIG_IGN);
    const auto refusal = writeTextFile(path, text);
    _exit(refusal ? static_cast<int>(refusal->code) : 255);
  }
  int status = 0;
  waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST_F(TextFile, leavesTheOldOneWhenThereIsNoRoom) {
  ASSERT_FALSE(writeTextFile(file(), "old"));
  EXPECT_EQ(refusalWithRoomFor(1000, file(), std::string(5000, 'n')),
            static_cast<int>(RefusalCode::diskFull));
  EXPECT_EQ(contentOf(file()), "old");
  EXPECT_EQ(names(), std::vector<std::string>{"case.json"});
  EXPECT_EQ(refusalWithRoomFor(1000, file(), "fits"), 255);
}

TEST_F(TextFile, saysThatItsFolderIsGone) {
  const auto refusal = writeTextFile(folder_ / "gone" / "case.json", "text");
  ASSERT_TRUE(refusal);
  EXPECT_EQ(refusal->code, RefusalCode::folderMissing);
}

TEST_F(TextFile, saysThatItsFolderMayNotBeWrittenTo) {
  if (geteuid() == 0) GTEST_SKIP() << "nothing is forbidden to the superuser";
  ASSERT_FALSE(writeTextFile(file(), "old"));
  fs::permissions(folder_, fs::perms::owner_read | fs::perms::owner_exec);
  const auto refusal = writeTextFile(file(), "new");
  ASSERT_TRUE(refusal);
  EXPECT_EQ(refusal->code, RefusalCode::folderReadOnly);
  EXPECT_EQ(contentOf(file()), "old");
}

TEST_F(TextFile, mayBeReadByWhomTheOldOneAllowed) {
  ASSERT_FALSE(writeTextFile(file(), "old"));
  fs::permissions(file(), fs::perms::owner_read | fs::perms::owner_write);
  ASSERT_FALSE(writeTextFile(file(), "new"));
  EXPECT_EQ(fs::status(file()).permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(TextFile, isWrittenWhereANamePointsTo) {
  ASSERT_FALSE(writeTextFile(file(), "old"));
  fs::create_symlink(file(), folder_ / "pointer.json");
  ASSERT_FALSE(writeTextFile(folder_ / "pointer.json", "new"));
  EXPECT_TRUE(fs::is_symlink(folder_ / "pointer.json"));
  EXPECT_EQ(contentOf(file()), "new");
}

TEST_F(TextFile, isComparedWithWhatWasKnown) {
  EXPECT_EQ(compareFile(file(), "text"), FileNow::gone);
  ASSERT_FALSE(writeTextFile(file(), "text"));
  EXPECT_EQ(compareFile(file(), "text"), FileNow::asKnown);
  EXPECT_EQ(compareFile(file(), "tent"), FileNow::changed);
}

}  // namespace
}  // namespace wardchalk
