console.error('not built in yet');
process.exitCode = 2;
