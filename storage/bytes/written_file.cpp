// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/written_file.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <cstdio>
#include <optional>
#include <string>
#include <system_error>

#include <fcntl.h>
#include <sys/random.h>
#include <sys/stat.h>
#include <unistd.h>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;
using core::Message;

constexpr std::string_view kStudyHead = "SQLite format 3";
constexpr std::size_t kMarkWithin = 512; // bytes of a page that may hold its mark
constexpr mode_t kNewFile = 0666;        // less what the user's mask takes away
constexpr mode_t kPermissions = 0777;
constexpr int kTries = 100; // of names that are taken

/// Why not; nothing: it may be written, or was.
using Refusal = std::optional<Message>;

Message problemOf(int number)
{
    return core::systemProblem(number);
}

bool isSame(const struct stat& one, const struct stat& other)
{
    return one.st_dev == other.st_dev && one.st_ino == other.st_ino;
}

/// Whether any input is this very file, by whatever name.
bool isInput(const struct stat& found, const WriteRules& rules)
{
    return std::any_of(rules.inputs.begin(), rules.inputs.end(), [&](const fs::path& input) {
        struct stat its {};
        const int known =
            input == kStandardInputWord ? ::fstat(STDIN_FILENO, &its) : ::stat(input.c_str(), &its);
        return known == 0 && isSame(found, its);
    });
}

/// Of a file that is there. A study is known by its ending without being opened: to close a file
/// drops the locks that this program has on it.
bool isStudy(const fs::path& file)
{
    return file.extension() == kStudyEnding || beginsAsAStudy(headOf(file, kStudyHead.size()));
}

/// "day.bothways-journal" beside a study is taken for a part of it.
bool isPartOfAStudy(const fs::path& target)
{
    const std::string name = target.string();
    std::error_code problem;
    for (const std::string_view part : {"-journal", "-wal", "-shm"})
        if (name.ends_with(part)) {
            const fs::path study = name.substr(0, name.size() - part.size());
            return fs::exists(study, problem) && isStudy(study);
        }
    return false;
}

/// Writes all of it.
Refusal pour(int file, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t count = ::write(file, bytes.data(), bytes.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return problemOf(errno);
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return std::nullopt;
}

/// One file to be written, and the folder that it is in.
class WrittenFile {
public:
    WrittenFile(const fs::path& target, std::string_view bytes, const WriteRules& rules)
        : m_target(target), m_name(target.filename().string()), m_bytes(bytes), m_rules(rules)
    {
    }

    Refusal write()
    {
        if (m_rules.streams == Streams::taken)
            if (const auto handed = handedFile(m_target))
                return writeStream(FileHandle(::fcntl(*handed, F_DUPFD_CLOEXEC, 3)));
        if (Refusal refused = refusal())
            return refused;
        if (m_isStream)
            return writeStream(
                FileHandle(::openat(m_folder.get(), m_name.c_str(), O_WRONLY | O_CLOEXEC)));
        if (m_isThereAlready)
            return std::nullopt;
        return writeBeside();
    }

    /// Why it may not be written, as far as can be seen beforehand.
    Refusal refusal()
    {
        if (m_name.empty() || m_name == "." || m_name == "..")
            return "it is a directory"_t;
        const fs::path folder = m_target.has_parent_path() ? m_target.parent_path() : fs::path(".");
        m_folder = FileHandle(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
        if (!m_folder && errno == EACCES) // a folder that may be written to but not listed
            m_folder = FileHandle(::open(folder.c_str(), O_PATH | O_DIRECTORY | O_CLOEXEC));
        if (!m_folder)
            return problemOf(errno);
        return look();
    }

private:
    /// What stands at the name now, and whether it may go.
    Refusal look()
    {
        m_isStream = m_isThereAlready = false;
        m_old.reset();
        if (isPartOfAStudy(m_target))
            return "it would be taken for a part of the study beside it"_t;
        struct stat found {};
        if (::fstatat(m_folder.get(), m_name.c_str(), &found, AT_SYMLINK_NOFOLLOW) != 0)
            return errno == ENOENT ? Refusal() : problemOf(errno);
        if (S_ISDIR(found.st_mode))
            return "it is a directory"_t;
        if (S_ISLNK(found.st_mode)) {
            struct stat behind {};
            const bool leads = ::fstatat(m_folder.get(), m_name.c_str(), &behind, 0) == 0;
            if (!leads || !isStream(behind))
                return "it is a link, and what a link leads to is not written over"_t;
            found = behind;
        }
        if (isStream(found)) {
            m_isStream = m_rules.streams == Streams::taken;
            return m_isStream ? Refusal() : Refusal("it is no ordinary file"_t);
        }
        if (!S_ISREG(found.st_mode))
            return "it is no ordinary file"_t;
        m_old = found;
        return lookInside(found);
    }

    static bool isStream(const struct stat& found)
    {
        return S_ISFIFO(found.st_mode) || S_ISCHR(found.st_mode);
    }

    /// Of an ordinary file.
    Refusal lookInside(const struct stat& found)
    {
        if (isInput(found, m_rules))
            return "it is what is being read"_t;
        if (isStudy(m_target))
            return "it is a study, which is not written over"_t;
        if (::faccessat(m_folder.get(), m_name.c_str(), W_OK, 0) != 0)
            return problemOf(errno);
        const std::string head = headOf(m_target, kMarkWithin);
        const bool ours =
            !m_rules.ownMark.empty() && head.find(m_rules.ownMark) != std::string::npos;
        if (m_rules.replace || ours)
            return std::nullopt;
        m_isThereAlready = hasTheseBytes(found);
        if (m_isThereAlready)
            return std::nullopt;
        if (m_rules.howToReplace.empty())
            return "there is such a file already"_t;
        return core::message("there is such a file already; {}"_t, m_rules.howToReplace);
    }

    [[nodiscard]] bool hasTheseBytes(const struct stat& found) const
    {
        return static_cast<std::uintmax_t>(found.st_size) == m_bytes.size() &&
               headOf(m_target, m_bytes.size()) == m_bytes;
    }

    Refusal writeStream(const FileHandle& stream)
    {
        struct stat found {};
        if (!stream || ::fstat(stream.get(), &found) != 0)
            return problemOf(errno);
        if (S_ISREG(found.st_mode) && isInput(found, m_rules))
            return "it is what is being read"_t;
        return pour(stream.get(), m_bytes);
    }

    /// Into a file without a name, which nobody else can find and which is gone when we are; into
    /// one with a name that cannot be guessed where the file system knows no other.
    Refusal writeBeside()
    {
        m_file =
            FileHandle(::openat(m_folder.get(), ".", O_TMPFILE | O_WRONLY | O_CLOEXEC, kNewFile));
        const bool nameless = static_cast<bool>(m_file);
        if (!nameless)
            if (Refusal refused = openNamed())
                return refused;
        Refusal failed = fill();
        if (!failed)
            failed = publish(nameless);
        if (failed && !m_beside.empty())
            ::unlinkat(m_folder.get(), m_beside.c_str(), 0);
        return failed;
    }

    static std::string unguessableName()
    {
        std::array<unsigned char, 12> noise{};
        std::string name = ".bothways-";
        if (::getrandom(noise.data(), noise.size(), 0) != static_cast<ssize_t>(noise.size()))
            noise.fill(0); // then O_EXCL alone keeps us from another's file
        for (const unsigned char byte : noise)
            name += "0123456789abcdef"[byte >> 4U], name += "0123456789abcdef"[byte & 15U];
        return name;
    }

    Refusal openNamed()
    {
        for (int tried = 0; tried < kTries; ++tried) {
            const std::string name = unguessableName();
            m_file = FileHandle(::openat(m_folder.get(), name.c_str(),
                                         O_CREAT | O_EXCL | O_NOFOLLOW | O_WRONLY | O_CLOEXEC,
                                         kNewFile));
            if (m_file) {
                m_beside = name;
                return std::nullopt;
            }
            if (errno != EEXIST)
                break;
        }
        return problemOf(errno);
    }

    Refusal fill()
    {
        if (m_old)
            takePermissions();
        if (Refusal failed = pour(m_file.get(), m_bytes))
            return failed;
        return flushed(m_file.get());
    }

    /// Those of what is replaced. Where the group cannot be kept, what it was allowed is not handed
    /// to another.
    void takePermissions() const
    {
        struct stat its {};
        mode_t mode = m_old->st_mode & kPermissions;
        const bool known = ::fstat(m_file.get(), &its) == 0;
        if (!known || its.st_uid != m_old->st_uid || its.st_gid != m_old->st_gid)
            if (::fchown(m_file.get(), m_old->st_uid, m_old->st_gid) != 0)
                mode &= ~mode_t{S_IRWXG};
        ::fchmod(m_file.get(), mode);
    }

    static Refusal flushed(int file)
    {
        if (::fsync(file) == 0 || errno == EINVAL || errno == ENOSYS || errno == EBADF)
            return std::nullopt; // some file systems know no flushing
        return problemOf(errno);
    }

    /// The written file takes the name, if what stands there may still go.
    Refusal publish(bool nameless)
    {
        if (nameless && !m_old && link(m_name) == 0)
            return flushed(m_folder.get());
        if (nameless)
            if (Refusal refused = linkBeside())
                return refused;
        for (int tried = 0; tried < kTries; ++tried) {
            if (Refusal refused = lookAgain(); refused || m_isThereAlready)
                return refused ? refused : dropBeside();
            if (rename(m_old ? 0U : unsigned{RENAME_NOREPLACE}) == 0) {
                m_beside.clear();
                return flushed(m_folder.get());
            }
            if (errno != EEXIST) // another writer was quicker: look what it wrote
                break;
        }
        return problemOf(errno);
    }

    [[nodiscard]] int rename(unsigned how) const
    {
        const int folder = m_folder.get();
        const int renamed = ::renameat2(folder, m_beside.c_str(), folder, m_name.c_str(), how);
        if (renamed == 0 || (errno != EINVAL && errno != ENOSYS))
            return renamed;
        return ::renameat(folder, m_beside.c_str(), folder, m_name.c_str());
    }

    /// Another writer may have been quicker.
    Refusal lookAgain()
    {
        Refusal refused = look();
        if (!refused && m_isStream)
            return "it is no ordinary file"_t;
        return refused;
    }

    /// Another writer wrote the same.
    Refusal dropBeside()
    {
        if (!m_beside.empty())
            ::unlinkat(m_folder.get(), m_beside.c_str(), 0);
        m_beside.clear();
        return std::nullopt;
    }

    [[nodiscard]] int link(const std::string& name) const
    {
        const std::string file = "/proc/self/fd/" + std::to_string(m_file.get());
        return ::linkat(AT_FDCWD, file.c_str(), m_folder.get(), name.c_str(), AT_SYMLINK_FOLLOW);
    }

    /// Gives a file without a name one that cannot be guessed.
    Refusal linkBeside()
    {
        for (int tried = 0; tried < kTries; ++tried) {
            const std::string name = unguessableName();
            if (link(name) == 0) {
                m_beside = name;
                return std::nullopt;
            }
            if (errno != EEXIST)
                break;
        }
        if (Refusal refused = openNamed()) // no /proc: write it once more
            return refused;
        return fill();
    }

    const fs::path& m_target;
    std::string m_name;
    std::string_view m_bytes;
    const WriteRules& m_rules;
    FileHandle m_folder, m_file;
    std::string m_beside; ///< our file's name until it takes that of the target
    std::optional<struct stat> m_old;
    bool m_isStream = false, m_isThereAlready = false;
};

} // namespace

namespace {

core::Outcome outcomeOf(Refusal why, const fs::path& target)
{
    if (!why)
        return core::Done{};
    return core::Error{core::ErrorCode::studyFile,
                       core::message("cannot be written: {}"_t, *std::move(why)), target.string()};
}

} // namespace

bool beginsAsAStudy(std::string_view bytes)
{
    return bytes.starts_with(kStudyHead);
}

core::Outcome writeWholeFile(const fs::path& target, std::string_view bytes,
                             const WriteRules& rules)
{
    return outcomeOf(WrittenFile(target, bytes, rules).write(), target);
}

core::Outcome mayWriteFile(const fs::path& target, const WriteRules& rules)
{
    if (rules.streams == Streams::taken && handedFile(target))
        return core::Done{};
    return outcomeOf(WrittenFile(target, {}, rules).refusal(), target);
}

} // namespace bothways::storage
