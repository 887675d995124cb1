#pragma once

#include <filesystem>

namespace baitwright {

/// A backup carries a seal: one more page behind those that SQLite reads, with a digest of every byte before it, so
/// that a bit that turned on a bad disk is found though SQLite has no use for it. Whoever writes into the file as a
/// store breaks no rule: SQLite counts its writings, and the seal says how many there were.
/// **Source**: the digest is FNV-1a of 64 bits (Fowler, Noll, Vo; from memory): each step is one to one, so that no
/// single byte can change without it. The file's header: SQLite, "Database File Format", 1.3 (offsets 16, 24, 28, 92).

/// Seals a file that no SQLite has open. Throws SQLite::Exception where it cannot be written.
void seal_backup(const std::filesystem::path& path);

enum class Seal { none, holds, broken };
/// `none` too where the file was written into since, or cannot be read.
Seal seal_of(const std::filesystem::path& path);

}  // namespace baitwright
