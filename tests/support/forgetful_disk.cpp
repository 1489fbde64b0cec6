// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/forgetful_disk.h"

#include <sqlite3.h>

#include <cstring>
#include <fstream>
#include <iterator>
#include <random>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;

ForgetfulDisk* disk = nullptr;
sqlite3_vfs* base = nullptr;
sqlite3_vfs shim;

/// What SQLite allocates for a file; the base's own file lies behind it.
struct ShimFile {
    sqlite3_file head;
    sqlite3_file* real;
    ForgetfulDisk::File* log; ///< null: a file without a name
};

ShimFile* shimOf(sqlite3_file* file)
{
    return reinterpret_cast<ShimFile*>(file);
}

sqlite3_file* realOf(sqlite3_file* file)
{
    return shimOf(file)->real;
}

int closeFile(sqlite3_file* file)
{
    return realOf(file)->pMethods ? realOf(file)->pMethods->xClose(realOf(file)) : SQLITE_OK;
}

int readFile(sqlite3_file* file, void* to, int size, sqlite3_int64 at)
{
    return realOf(file)->pMethods->xRead(realOf(file), to, size, at);
}

int writeFile(sqlite3_file* file, const void* from, int size, sqlite3_int64 at)
{
    if (const int problem = disk->call(SQLITE_IOERR_WRITE); problem != SQLITE_OK)
        return problem;
    if (ForgetfulDisk::File* log = shimOf(file)->log)
        log->pending.push_back(
            {at, std::string(static_cast<const char*>(from), static_cast<std::size_t>(size)),
             false});
    return realOf(file)->pMethods->xWrite(realOf(file), from, size, at);
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    if (const int problem = disk->call(SQLITE_IOERR_TRUNCATE); problem != SQLITE_OK)
        return problem;
    if (ForgetfulDisk::File* log = shimOf(file)->log)
        log->pending.push_back({size, {}, true});
    return realOf(file)->pMethods->xTruncate(realOf(file), size);
}

void apply(std::string& content, const ForgetfulDisk::Pending& change)
{
    const auto at = static_cast<std::size_t>(change.at);
    if (change.truncates) {
        content.resize(at);
        return;
    }
    if (content.size() < at + change.bytes.size())
        content.resize(at + change.bytes.size());
    content.replace(at, change.bytes.size(), change.bytes);
}

int syncFile(sqlite3_file* file, int flags)
{
    if (const int problem = disk->call(SQLITE_IOERR_FSYNC); problem != SQLITE_OK)
        return problem;
    if (ForgetfulDisk::File* log = shimOf(file)->log) {
        for (const ForgetfulDisk::Pending& change : log->pending)
            apply(log->flushed, change);
        log->pending.clear();
        log->onDisk = true; // SQLite flushes the folder with the first flush of a journal
    }
    return realOf(file)->pMethods->xSync(realOf(file), flags);
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size)
{
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}

int lockFile(sqlite3_file* file, int lock)
{
    return realOf(file)->pMethods->xLock(realOf(file), lock);
}

int unlockFile(sqlite3_file* file, int lock)
{
    return realOf(file)->pMethods->xUnlock(realOf(file), lock);
}

int checkReserved(sqlite3_file* file, int* is)
{
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), is);
}

int controlFile(sqlite3_file* file, int operation, void* argument)
{
    return realOf(file)->pMethods->xFileControl(realOf(file), operation, argument);
}

int sectorSize(sqlite3_file* file)
{
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}

int characteristics(sqlite3_file*)
{
    return 0; // promises nothing
}

sqlite3_io_methods makeMethods()
{
    sqlite3_io_methods methods{};
    methods.iVersion = 1; // no shared memory, no mapping
    methods.xClose = closeFile;
    methods.xRead = readFile;
    methods.xWrite = writeFile;
    methods.xTruncate = truncateFile;
    methods.xSync = syncFile;
    methods.xFileSize = sizeOfFile;
    methods.xLock = lockFile;
    methods.xUnlock = unlockFile;
    methods.xCheckReservedLock = checkReserved;
    methods.xFileControl = controlFile;
    methods.xSectorSize = sectorSize;
    methods.xDeviceCharacteristics = characteristics;
    return methods;
}

std::string contentOf(const fs::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* given)
{
    static const sqlite3_io_methods methods = makeMethods();
    ShimFile* opened = shimOf(file);
    opened->head.pMethods = nullptr;
    opened->real = reinterpret_cast<sqlite3_file*>(opened + 1);
    opened->log = nullptr;
    if (const int problem = disk->call(SQLITE_CANTOPEN); problem != SQLITE_OK)
        return problem;
    const bool wasThere = name && fs::exists(name);
    const int code = base->xOpen(base, name, opened->real, flags, given);
    if (code != SQLITE_OK)
        return code;
    if (name && !disk->files.contains(name))
        disk->files[name] = {wasThere, wasThere ? contentOf(name) : "", {}};
    if (name)
        opened->log = &disk->files[name];
    opened->head.pMethods = &methods;
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs*, const char* name, int syncsFolder)
{
    if (const int problem = disk->call(SQLITE_IOERR_DELETE); problem != SQLITE_OK)
        return problem;
    const int code = base->xDelete(base, name, syncsFolder);
    if (code == SQLITE_OK && syncsFolder)
        disk->files[name] = {};
    return code;
}

} // namespace

ForgetfulDisk::ForgetfulDisk()
{
    base = sqlite3_vfs_find(nullptr);
    shim = *base;
    shim.zName = "forgetful";
    shim.szOsFile = static_cast<int>(sizeof(ShimFile)) + base->szOsFile;
    shim.xOpen = openFile;
    shim.xDelete = deleteFile;
    disk = this;
    sqlite3_vfs_register(&shim, 1);
}

ForgetfulDisk::~ForgetfulDisk()
{
    sqlite3_vfs_register(base, 1);
    sqlite3_vfs_unregister(&shim);
    disk = nullptr;
}

void ForgetfulDisk::failAt(long call, Fault fault)
{
    m_calls = 0;
    m_failAt = call;
    m_fault = fault;
}

int ForgetfulDisk::call(int codeOfError)
{
    ++m_calls;
    if (m_failAt == 0 || m_calls < m_failAt || (m_calls > m_failAt && m_fault != Fault::dead))
        return SQLITE_OK;
    return m_fault == Fault::full ? SQLITE_FULL : codeOfError;
}

void ForgetfulDisk::survive(const fs::path& folder, std::uint32_t seed) const
{
    std::mt19937 random(seed);
    for (const auto& [name, file] : files) {
        // A name that was not flushed may be there all the same.
        if (!file.onDisk && (file.pending.empty() || random() % 2 == 0))
            continue;
        std::string content = file.flushed;
        const bool inOrder = random() % 2 == 0;
        const std::size_t kept = inOrder ? random() % (file.pending.size() + 1) : 0;
        for (std::size_t i = 0; i < file.pending.size(); ++i)
            if (inOrder ? i < kept : random() % 2 == 0)
                apply(content, file.pending[i]);
        std::ofstream(folder / fs::path(name).filename(), std::ios::binary)
            .write(content.data(), static_cast<std::streamsize>(content.size()));
    }
}

} // namespace bothways::tests
