// Runs a command and says last, on standard error, the most memory it had, in kB: peak_memory COMMAND [WORD ...]. It is
// a program of its own because Linux counts to a child what its parent had when it was started: from Python, that is
// more.
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>

int main(int argc, char** argv) {
    if (argc < 2) return 64;
    const pid_t child = fork();
    if (child < 0) return 71;
    if (child == 0) {
        execvp(argv[1], argv + 1);
        _exit(127);
    }
    int status = 0;
    rusage used{};
    if (wait4(child, &status, 0, &used) != child) return 71;
    std::fprintf(stderr, "%ld\n", used.ru_maxrss);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 70;
}
